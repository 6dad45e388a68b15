// The working: the steps behind a figure, each with its formula, numbers, result and source.
import { copy, el, fill, slot } from "./dom.js";

/** The list items for the steps with these numbers. */
export function steps(report, numbers) {
  return numbers.map((n) => {
    const s = report.steps[n - 1];
    const item = copy("part-step");
    item.classList.add(s.kind);
    for (const name of ["formula", "numbers", "legend"]) slot(item, name).append(...lowered(s[name]));
    return fill(item, { label: s.label, result: s.result, source: cite(s) });
  });
}

// What stands after an underscore is set low. The build does the same for the worked example.
const lowered = (text) => text.split(/_([\p{L}\d]+)/u).map((part, i) => (i % 2 ? el("sub", {}, part) : part)).filter((part) => part !== "");

/** The source of a step. How the project knows it is worded by the build. */
export function cite(s) {
  if (!s.source) return "";
  const place = s.source_place ? ", " + s.source_place : "";
  const known = ["definition", "practice", "our-choice"].includes(s.source_id) ? undefined : document.querySelector("main").getAttribute("data-basis-" + s.source_basis);
  return s.source + place + (known ? " — " + known : "");
}
