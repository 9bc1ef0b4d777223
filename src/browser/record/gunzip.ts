/** Unpacks gzip by the browser, on any address. */
import type { Gunzip } from "../../engine/competency/status-list.ts";

/** Rejects what is no gzip, what gives more than `most` bytes, and where the browser can't. */
export const gunzip: Gunzip = async (bytes, most) => {
  const stream = new Blob([bytes.slice()]).stream().pipeThrough(new DecompressionStream("gzip"));
  const unpacked = new Uint8Array(most);
  let length = 0;
  // Readable streams can't be gone through by `for await` in every browser.
  const reader = stream.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    if (length + next.value.length > most) {
      await reader.cancel();
      throw new RangeError(`more than ${most} bytes`);
    }
    unpacked.set(next.value, length);
    length += next.value.length;
  }
  return unpacked.slice(0, length);
};
