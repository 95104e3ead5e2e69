/**
 * A function that works its result out when first called, and gives the same one ever after.
 *
 * @param make - works the result out
 * @returns the same function, with a memory
 */
export function once<T>(make: () => T): () => T {
  let made: { readonly result: T } | undefined
  return () => (made ??= { result: make() }).result
}
