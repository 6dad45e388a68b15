// Takes the place of scripts/compiled.js in a course package: the page holds the cores that its exercises need, or the one
// core of all calculators where the package was made from the site in one file.
import { unpack } from "../onefile/packed.js";

const compiling = new Map();

// The id of a core's pack: "pack-core-bench" for bench.wasm, or else that of the whole core.
function packOf(kind, file) {
  const own = `pack-${kind}-${file.replace(".wasm", "")}`;
  return document.getElementById(own) ? own : `pack-${kind}-whole`;
}

export function compile(file) {
  const id = packOf("core", file);
  if (!compiling.has(id)) compiling.set(id, unpack(id).then((bytes) => WebAssembly.compile(bytes)));
  return compiling.get(id);
}

export const held = compile; // a worker cannot look into the document

/** What a core says in the page's language. */
export async function wordsOf(file) {
  const id = packOf("words", file);
  return document.getElementById(id) ? new TextDecoder().decode(await unpack(id)) : "";
}

/** No hash is asked for here. */
export const sumOf = () => undefined;
