// Takes the place of scripts/compiled.js in the site that is one file: one core answers every page, and the page
// unpacks it, because a worker cannot look into the document.
import { unpack } from "./packed.js";

let compiling;

export const compile = () => (compiling ??= unpack("pack-core").then((bytes) => WebAssembly.compile(bytes)));

export const held = compile;

/** What the core says in a language. */
export async function wordsOf(_, language) {
  if (language === "en") return "";
  return new TextDecoder().decode(await unpack("pack-words-" + language));
}

/** No hash is asked for here. */
export const sumOf = () => undefined;
