/** A file as text. */
export interface PickedFile {
  readonly name: string
  readonly text: string
}

/** Lets the person choose a file; undefined when they choose none. */
export function pickFile(accept: string): Promise<PickedFile | undefined> {
  return new Promise((resolve, reject) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    input.addEventListener('cancel', () => resolve(undefined))
    input.addEventListener('change', () => {
      const [file] = input.files ?? []
      if (!file) resolve(undefined)
      else file.text().then((text) => resolve({ name: file.name, text }), reject)
    })
    input.click()
  })
}
