import { ref, watchEffect } from 'vue'

const KEY = 'lynchet-theme'

/** Light or dark: as the device has it until the person says otherwise. */
export function useTheme() {
  const dark = ref(kept() ?? matchMedia('(prefers-color-scheme: dark)').matches)

  watchEffect(() => {
    document.documentElement.dataset.theme = dark.value ? 'dark' : 'light'
  })

  function turn(): void {
    dark.value = !dark.value
    try {
      localStorage.setItem(KEY, dark.value ? 'dark' : 'light')
    } catch {
      // Nothing is lost: the page opens as the device has it.
    }
  }

  return { dark, turn }
}

function kept(): boolean | undefined {
  try {
    const word = localStorage.getItem(KEY)
    return word === null ? undefined : word === 'dark'
  } catch {
    return undefined
  }
}
