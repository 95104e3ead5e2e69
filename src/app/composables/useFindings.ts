import type { Problem } from '#core/units'
import { toDerive, type Findings, type Plan } from '#plan'
import type { Answer, Ask } from '#worker'
import { onScopeDispose, readonly, ref, shallowRef, toRaw, watch, type Ref } from 'vue'

/** Derives the findings anew whenever the plan is replaced; late answers are dropped. */
export function useFindings(plan: Readonly<Ref<Plan | undefined>>, worker: Worker) {
  const findings = shallowRef<Findings>()
  const problems = shallowRef<readonly Problem[]>([])
  const stage = ref('')
  const done = ref(1)
  /** The findings on show are of an earlier plan, and nothing is being worked out. */
  const stale = ref(false)
  let newest = 0

  function ask(question: Ask): void {
    worker.postMessage(question)
  }

  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    if (data.id !== newest) return
    if (data.kind === 'stage') {
      stage.value = data.stage
      done.value = data.done
      return
    }
    done.value = 1
    stale.value = data.kind !== 'findings'
    if (data.kind === 'findings') findings.value = data.findings
    problems.value = problemsOf(data)
  }
  worker.onerror = (event) => {
    done.value = 1
    stale.value = true
    problems.value = [failure(event.message)]
  }

  /** Works the plan on the sheet out anew. */
  function again(): void {
    if (!plan.value) return
    done.value = 0
    ask({ kind: 'derive', id: ++newest, plan: toDerive(toRaw(plan.value)) })
  }

  watch(plan, again, { immediate: true })
  onScopeDispose(() => worker.terminate())

  /** Stops the work under way; the last findings stay. */
  function cancel(): void {
    newest++
    done.value = 1
    stale.value = true
    ask({ kind: 'cancel' })
  }

  return {
    findings,
    problems,
    stage: readonly(stage),
    done: readonly(done),
    stale: readonly(stale),
    cancel,
    again,
  }
}

function problemsOf(answer: Answer): readonly Problem[] {
  if (answer.kind === 'problems') return answer.problems
  return answer.kind === 'failed' ? [failure(answer.message)] : []
}

const failure = (message: string): Problem => ({
  where: 'working out the findings',
  what: `Something went wrong: ${message || 'no reason given'}.`,
  mend: 'Your plan is kept. Undo the last change, or save the plan and report what happened.',
})
