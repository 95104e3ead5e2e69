import { addDecoder, BaseDecoder } from 'geotiff'
import { unpackLzw } from './capped-lzw'

/** Bytes of the widest number a band holds: a double. */
const WIDEST_BYTES = 8

let registered = false

/** Has strips and tiles unpacked no further than they can be: a small damaged file must not fill the memory or hang. */
export function registerCappedDecoders(): void {
  if (registered) return
  registered = true
  addDecoder([8, 32_946], () => Promise.resolve(CappedDeflate))
  addDecoder(5, () => Promise.resolve(CappedLzw))
}

class CappedLzw extends BaseDecoder {
  override decodeBlock(packed: ArrayBuffer): ArrayBuffer {
    const { tileWidth, tileHeight } = this.parameters
    return unpackLzw(new Uint8Array(packed), tileWidth * tileHeight * WIDEST_BYTES).buffer
  }
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
