import type { Problem } from '#core/units'
import type { Findings, Plan } from '#plan'
import type { Answer, Ask } from '#worker'
import { onScopeDispose, readonly, ref, shallowRef, toRaw, watch, type Ref } from 'vue'

/** Derives the findings anew whenever the plan is replaced; late answers are dropped. */
export function useFindings(plan: Readonly<Ref<Plan | undefined>>, worker: Worker) {
  const findings = shallowRef<Findings>()
  const problems = shallowRef<readonly Problem[]>([])
  const stage = ref('')
  const done = ref(1)
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
    if (data.kind === 'findings') findings.value = data.findings
    problems.value =
      data.kind === 'problems' ? data.problems : data.kind === 'failed' ? [failure(data.message)] : []
  }
  worker.onerror = (event) => {
    done.value = 1
    problems.value = [failure(event.message)]
  }

  watch(
    plan,
    (now) => {
      if (!now) return
      done.value = 0
      ask({ kind: 'derive', id: ++newest, plan: toRaw(now) })
    },
    { immediate: true },
  )
  onScopeDispose(() => worker.terminate())

  /** Stops the work under way; the last findings stay. */
  function cancel(): void {
    newest++
    done.value = 1
    ask({ kind: 'cancel' })
  }

  return { findings, problems, stage: readonly(stage), done: readonly(done), cancel }
}

const failure = (message: string): Problem => ({
  where: 'working out the findings',
  what: `Something went wrong: ${message || 'no reason given'}.`,
  mend: 'Your plan is kept. Undo the last change, or save the plan and report what happened.',
})
