// A working as a lesson: a sketch of what it is about, its formulas as books print them with their signs and the numbers put
// in, and a slider on any number of the form with the graph of the answer against it.
import { el } from "./dom.js";
import { formula, symbols } from "./lesson-math.js";
import { sketches } from "./lesson-sketches.js";
import { Slider } from "./lesson-slider.js";
import { picture } from "./picture.js";
import { say } from "./words.js";
import { cite } from "./working.js";

export class Lesson {
  root;
  #pick; // finds in a report the figure that the lesson is about
  #steps = el("ol", { class: "lesson-steps" });
  #slider;
  #shown; // the steps shown
  #answer; // the page's last

  constructor(main, root, pick) {
    this.root = root;
    this.#pick = pick;
    this.#slider = new Slider(main, pick);
    const sketch = sketches.drawn[document.documentElement.lang]?.[sketches.of[main.dataset.calculator]];
    root.replaceChildren(...(sketch ? [picture(sketch.picture)] : []), this.#steps, this.#slider.root);
  }

  /** Follows what the page has answered: { form, whole }. */
  async update(answer) {
    this.#answer = answer;
    const { form } = answer, report = await answer.whole();
    if (answer !== this.#answer) return; // the next came first
    const figure = this.#pick(report);
    this.root.hidden = !figure;
    if (!figure) return;
    this.#slider.update(form, report);
    const steps = figure.steps.map((n) => report.steps[n - 1]), text = JSON.stringify(steps);
    if (text === this.#shown) return;
    this.#shown = text;
    const given = steps.filter((s) => s.kind === "entered");
    this.#steps.replaceChildren(...(given.length > 0 ? [givens(given)] : []), ...steps.filter((s) => s.kind !== "entered").map(explained));
  }
}

const givens = (steps) => el("li", {}, el("h3", {}, say("Given")), el("dl", { class: "lesson-symbols" }, ...steps.map((s) => el("div", {}, el("dt", {}, s.label), el("dd", {}, el("b", {}, s.result))))));

// One step. The line in plain text stands above in the working; this is the same as a book has it.
function explained(s) {
  const item = el("li", {}, el("h3", {}, s.label));
  if (s.kind === "worked" || s.kind === "solved") {
    item.append(formula(s.formula), symbols(s.legend));
    if (s.numbers) item.append(el("p", { class: "lesson-with" }, say("With the numbers put in:")), formula(s.numbers));
  } else if (s.formula) {
    item.append(el("p", {}, s.formula));
  }
  item.append(el("p", { class: "lesson-result" }, say("Result: {result}", { result: s.result })), el("p", { class: "source" }, cite(s)));
  return item;
}
