// The working: the steps behind a figure, each with its formula, numbers, result and source.
import { copy, fill } from "./dom.js";

const main = document.querySelector("main");

/** The list items for the steps with these numbers. */
export function steps(report, numbers) {
  return numbers.map((n) => {
    const s = report.steps[n - 1];
    const item = copy("part-step");
    item.classList.add(s.kind);
    return fill(item, { label: s.label, result: s.result, formula: s.formula, numbers: s.numbers, legend: s.legend, source: cite(s) });
  });
}

// How the project knows a source is worded by the build.
function cite(s) {
  if (!s.source) return "";
  const place = s.source_place ? ", " + s.source_place : "";
  const known = ["definition", "practice"].includes(s.source_id) ? undefined : main.getAttribute("data-basis-" + s.source_basis);
  return s.source + place + (known ? " — " + known : "");
}
