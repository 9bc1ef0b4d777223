/** Unpacks lists of withdrawals by the platform's own gzip, which works on plain http and from disk too. */
import type { Gunzip } from "../../engine/competency/status-list.ts";

export const gunzip: Gunzip = async (bytes, most) => {
  const packed = new Blob([new Uint8Array(bytes)]).stream();
  const unpacked = new Uint8Array(most);
  let length = 0;
  for await (const chunk of chunksOf(packed.pipeThrough(new DecompressionStream("gzip")))) {
    if (length + chunk.length > most) throw new RangeError(`more than ${most} bytes`);
    unpacked.set(chunk, length);
    length += chunk.length;
  }
  return unpacked.subarray(0, length);
};

/** Safari reads no stream by `for await`. */
async function* chunksOf(stream: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = stream.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    await reader.cancel();
  }
}
