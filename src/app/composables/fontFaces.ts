/** The page’s own typefaces as a style sheet with whole addresses, for a page inside the page. */
export function fontFaces(): string {
  return [...document.styleSheets].flatMap(facesOf).join('\n')
}

function facesOf(sheet: CSSStyleSheet): string[] {
  const base = sheet.href ?? document.baseURI
  return [...sheet.cssRules]
    .filter((rule) => rule instanceof CSSFontFaceRule)
    .map(({ cssText }) =>
      cssText.replace(
        /url\("?([^")]+)"?\)/g,
        (_, address: string) => `url("${new URL(address, base).href}")`,
      ),
    )
}
