// Gets a compiled core. The build of the site in one file puts another module with the same exports in its place.
import { sums } from "./build.js";

// A file of another version is refused. Where a cache still has one, the host is asked past it.
const get = (name, cache) => fetch(new URL("../" + name, import.meta.url), { integrity: sums[name], cache });
const anew = (name) => get(name, "reload");

/** Compiles the core in a file. Hosts that send it under a wrong type make the streaming way fail; the plain way then works. */
export async function compile(file) {
  try {
    return await WebAssembly.compileStreaming(get(file));
  } catch {
    const answer = await get(file).catch(() => anew(file));
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
  const answer = await get(name).catch(() => anew(name));
  if (!answer.ok) throw new Error(`${file} in ${language}: ${answer.status}`);
  return answer.text();
}
