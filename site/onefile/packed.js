// What the file holds packed: gzip, written as base64 into script elements that no browser runs.

/** Whether this browser can unpack it. */
export const canUnpack = Boolean(globalThis.DecompressionStream);

/** The bytes of the pack in the element with an id. */
export async function unpack(id) {
  const text = document.getElementById(id).textContent;
  const bytes = Uint8Array.fromBase64?.(text) ?? Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}
