// Takes the place of scripts/compiled.js in an embedded page. The page gets the core, because a worker made from text
// has no address to start from.
import { sums } from "../scripts/build.js";

const at = (name) => new URL(document.documentElement.dataset.root + name, document.baseURI);

// A file of another version is refused. Where a cache still has one, the host is asked past it.
async function get(name) {
  const of = { integrity: sums[name] };
  const answer = await fetch(at(name), of).catch(() => fetch(at(name), { ...of, cache: "reload" }));
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  return answer;
}

/** Compiles the core in a file. Hosts that send it under a wrong type make the streaming way fail; the plain way then works. */
export async function compile(file) {
  try {
    return await WebAssembly.compileStreaming(fetch(at(file), { integrity: sums[file] }));
  } catch {
    return WebAssembly.compile(await (await get(file)).arrayBuffer());
  }
}

export const held = compile;

/** What a core says in a language, as text for it. */
export async function wordsOf(file, language) {
  return language === "en" ? "" : (await get(`${language}/${file.replace(".wasm", ".words")}`)).text();
}

/** No hash is asked for here. */
export const sumOf = () => undefined;
