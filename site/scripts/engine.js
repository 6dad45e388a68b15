// Starts the core, in a worker or on the page. The import defines Go's own loader, globalThis.Go.
import "../wasm_exec.js";

/** Starts a compiled core, tells it what to speak, and returns its function (calculator, form) -> report as JSON. */
export async function start(module, { words, mark }) {
  const go = new globalThis.Go();
  go.run(await WebAssembly.instantiate(module, go.importObject));
  globalThis.speak(words, mark);
  const calculate = globalThis.calculate;
  return (id, form) => {
    const report = calculate(id, form);
    if (typeof report !== "string") throw new Error("the core has stopped");
    return report;
  };
}
