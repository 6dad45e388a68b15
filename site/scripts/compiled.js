// Gets a compiled core. The build of the site in one file puts another module with the same exports in its place.
import { sums } from "./build.js";

// A file of another version is refused. Where a cache still has one, the host is asked past it.
const get = (name, integrity, cache) => fetch(new URL("../" + name, import.meta.url), { integrity, cache });

// The device's own copy of the site is of one version, and its cores need no hash: without one, a browser takes up what it
// has compiled of them before. Another tab may put another version in its place.
const keeper = globalThis.navigator?.serviceWorker?.controller;

/** The hash to hold a core to. The page says so to its worker, which cannot see where its files come from. */
export const sumOf = (file) => (keeper && navigator.serviceWorker.controller === keeper ? undefined : sums[file]);

/** Compiles the core in a file. Hosts that send it under a wrong type make the streaming way fail; the plain way then works. */
export async function compile(file, sum) {
  try {
    return await WebAssembly.compileStreaming(get(file, sum));
  } catch {
    const answer = await get(file, sum).catch(() => get(file, sum, "reload"));
    if (!answer.ok) throw new Error(file + ": " + answer.status);
    return WebAssembly.compile(await answer.arrayBuffer());
  }
}

/** The core that a worker cannot get by itself; none here. */
export const held = () => undefined;

/** What a core says in a language, as text for it; blank for English, which it speaks by itself. */
export async function wordsOf(file, language) {
  if (language === "en") return "";
  const name = `${language}/${file.replace(".wasm", ".words")}`;
  const answer = await get(name, sums[name]).catch(() => get(name, sums[name], "reload"));
  if (!answer.ok) throw new Error(`${file} in ${language}: ${answer.status}`);
  return answer.text();
}
