/** Changes the address without a new page. Some browsers refuse it when it comes too often; pages work without. */
export function replaceAddress(address: URL | string): void {
  try {
    history.replaceState(null, "", address);
  } catch {
    // The address stays as it was.
  }
}
