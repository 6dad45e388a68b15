// Puts the formulas of a lesson on the page.
import { el } from "./dom.js";
import { layout, legend, symbol } from "./lesson-formula.js";
import { decimalMark } from "./tongue.js";

const space = "http://www.w3.org/1998/Math/MathML";

function element([tag, ...parts]) {
  const e = document.createElementNS(space, tag);
  e.append(...parts.map((part) => (typeof part === "string" ? part : element(part))));
  return e;
}

function math(parts, display) {
  const root = element(["math", parts]);
  if (display) root.setAttribute("display", "block");
  return root;
}

/** A formula on a line of its own. */
export const formula = (text) => el("p", { class: "lesson-formula" }, math(layout(text, decimalMark), true));

/** What the signs of a formula stand for. */
export const symbols = (text) => el("dl", { class: "lesson-symbols" }, ...legend(text).map(([sign, name, value]) =>
  el("div", {}, el("dt", {}, math(symbol(sign))), el("dd", {}, name, " ", el("b", {}, value)))));
