// Writes a zip file (PKWARE APPNOTE 6.3.10, sections 4.3 and 4.4; the layout is known from memory). The same files make the
// same bytes: all are dated to the first day that the format knows.

const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  return c;
});

/** The CRC-32 of bytes (ISO 3309). */
export function crc32(bytes) {
  let c = 0xffffffff;
  for (const b of bytes) c = table[(c ^ b) & 255] ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

const deflated = async (bytes) => new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"))).arrayBuffer());

// Numbers of two and four bytes, the lowest byte first: [2, n] or [4, n].
function record(...numbers) {
  const bytes = [];
  for (const [size, n] of numbers) for (let i = 0; i < size; i++) bytes.push((n >>> (8 * i)) & 255);
  return Uint8Array.from(bytes);
}

const version = [2, 20], utf8 = [2, 1 << 11], deflate = [2, 8], time = [2, 0], date = [2, (1 << 5) | 1]; // 1 January 1980

/** A zip of files: [name, text]. Returns a Blob. */
export async function zip(files) {
  const parts = [], directory = [];
  let at = 0;
  for (const [name, text] of files) {
    const title = new TextEncoder().encode(name), bytes = new TextEncoder().encode(text), packed = await deflated(bytes);
    const facts = [version, utf8, deflate, time, date, [4, crc32(bytes)], [4, packed.length], [4, bytes.length], [2, title.length], [2, 0]];
    parts.push(record([4, 0x04034b50], ...facts), title, packed);
    directory.push(record([4, 0x02014b50], version, ...facts, [2, 0], [2, 0], [2, 0], [4, 0], [4, at]), title);
    at += 30 + title.length + packed.length;
  }
  const size = directory.reduce((sum, part) => sum + part.length, 0);
  const end = record([4, 0x06054b50], [2, 0], [2, 0], [2, files.length], [2, files.length], [4, size], [4, at], [2, 0]);
  return new Blob([...parts, ...directory, end], { type: "application/zip" });
}
