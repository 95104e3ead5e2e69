/** Hands a text file to the person. */
export function download(name: string, text: string, kind = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type: kind }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address))
}

/** A plan’s name as the start of a file name: "The bank" becomes "the-bank". */
export function fileStem(name: string): string {
  return (
    name
      .toLowerCase()
      .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'plan'
  )
}
