// Starts the compiled core without a browser.
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/**
 * Loads wasm_exec.js and one core, "job" for job.wasm, from a built site; resolves to its calculate(id, form) -> report,
 * both texts.
 */
export async function start(dist, core) {
  globalThis.crypto ??= (await import("node:crypto")).webcrypto; // node 18 has it there alone
  await import(pathToFileURL(join(dist, "wasm_exec.js"))); // defines globalThis.Go
  const go = new Go();
  const { instance } = await WebAssembly.instantiate(await readFile(join(dist, core + ".wasm")), go.importObject);
  go.run(instance); // resolves only when the core ends, which it does not
  return globalThis.calculate;
}
