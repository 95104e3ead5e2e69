import { addDecoder, BaseDecoder } from 'geotiff'

/** Bytes of the widest number a band holds: a double. */
const WIDEST_BYTES = 8

let registered = false

/** Has deflated strips and tiles unpacked no further than they can be, so that a small file cannot fill the memory. */
export function registerCappedDeflate(): void {
  if (registered) return
  registered = true
  addDecoder([8, 32_946], () => Promise.resolve(CappedDeflate))
}

class CappedDeflate extends BaseDecoder {
  override async decodeBlock(packed: ArrayBuffer): Promise<ArrayBuffer> {
    const { tileWidth, tileHeight } = this.parameters
    return unpacked(packed, tileWidth * tileHeight * WIDEST_BYTES)
  }
}

async function unpacked(packed: ArrayBuffer, mostBytes: number): Promise<ArrayBuffer> {
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate'))
  const reader = stream.getReader()
  const pieces: Uint8Array[] = []
  let bytes = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    bytes += value.length
    if (bytes > mostBytes) {
      await reader.cancel()
      throw new RangeError(`unpacked: a block must have at most ${mostBytes} bytes, got more`)
    }
    pieces.push(value)
  }
  const whole = new Uint8Array(bytes)
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole.buffer
}
