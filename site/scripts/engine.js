// Starts the core, in a worker or on the page. The import defines Go's own loader, globalThis.Go.
import "../wasm_exec.js";

/** Compiles the core in a file. Hosts that send it under a wrong type make the streaming way fail; the plain way then works. */
export async function compile(file) {
  const address = new URL("../" + file, import.meta.url);
  try {
    return await WebAssembly.compileStreaming(fetch(address));
  } catch {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(file + ": " + answer.status);
    return WebAssembly.compile(await answer.arrayBuffer());
  }
}

/** Starts a compiled core and returns its function (calculator, form) -> report as JSON. */
export async function start(module) {
  const go = new globalThis.Go();
  go.run(await WebAssembly.instantiate(module, go.importObject));
  const calculate = globalThis.calculate;
  return (id, form) => {
    const report = calculate(id, form);
    if (typeof report !== "string") throw new Error("the core has stopped");
    return report;
  };
}
