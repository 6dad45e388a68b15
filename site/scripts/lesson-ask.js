// Asks the cores for what a lesson is made of: see calc/lesson.
import { Core } from "./core.js";
import { withShopUnits } from "./shop-units.js";
import { write } from "./state.js";

const cores = new Map();

function core(file) {
  if (!cores.has(file)) cores.set(file, new Core(file));
  return cores.get(file);
}

/** What the core of lessons answers: "scale" or "graph" of some texts. */
export const ask = (what, texts) => core("booth.wasm").report("lesson/" + what, write(new Map(Object.entries(texts).filter(([, text]) => text !== ""))));

/** The report of a calculator in a core for a form. */
export const reportOf = (file, id, form) => core(file).report(id, write(withShopUnits(form)));
