// One task on the page: what is given, the learner's answer, and once it is judged the result with the working.
import { byId, copy, el, fill } from "./dom.js";
import { formOf } from "./exercise-core.js";
import { sentence } from "./problems.js";
import { say } from "./words.js";
import { steps } from "./working.js";

/** What a task asks for, in a sentence. */
export function asked(task) {
  const unit = task.units.find((u) => u.id === task.unit_id)?.symbol;
  return unit ? say("Work out: {what}, in {unit}", { what: task.label, unit }) : say("Work out: {what}", { what: task.label });
}

// The working ends in the unit of its source. Where the task asks for another, a line says what that is in it.
function inItsUnit({ report, steps: [...numbers], right, right_unit: unit }) {
  const last = report.steps[numbers.at(-1) - 1];
  if (!unit || !last || last.result.endsWith("\u202f" + unit)) return [];
  return [el("li", {}, say("In the unit asked for: {right}", { right: `${right}\u202f${unit}` }))];
}

const levels = { right: "go", close: "wait", off: "stop" };

export class TaskView {
  #box = byId("task-answer");
  #unit = byId("task-unit");

  /** Calls f when the learner has typed. */
  typed(f) {
    for (const c of [this.#box, this.#unit]) c.addEventListener("input", () => {
      this.wrong("");
      f();
    });
  }

  get answer() {
    return { typed: this.#box.value.trim(), unit: this.#unit.hidden ? this.#unit.dataset.only ?? "" : this.#unit.value };
  }

  set answer({ typed, unit }) {
    this.#box.value = typed ?? "";
    if (!this.#unit.hidden) this.#unit.value = unit || this.#unit.value;
  }

  /** Shows a task; n of so many, from the calculator with that page. */
  show(task, { n, of, page }) {
    byId("task-number").textContent = say("Task {n} of {of}", { n, of });
    byId("task-title").textContent = task.question;
    const drawn = task.problems.length === 0;
    byId("task-given").replaceChildren(...(task.given ?? []).map((g) => el("div", {}, el("dt", {}, g.label), el("dd", {}, g.text))));
    byId("task-asked").textContent = drawn ? asked(task) : task.problems.map(sentence).join(" ");
    byId("task-form").hidden = !drawn || Boolean(task.judged);
    this.wrong("");
    if (drawn) this.#units(task.units);
    this.answer = { typed: "", unit: task.unit_id };
    this.#result(task);
    byId("task-after").hidden = drawn && !task.judged;
    for (const id of ["task-open", "task-again"]) byId(id).hidden = !drawn;
    byId("task-steps").previousElementSibling.hidden = !task.judged;
    byId("task-steps").replaceChildren(...(task.judged ? [...steps(task.report, task.steps), ...inItsUnit(task)] : []));
    if (drawn) byId("task-open").href = `${page}#${formOf(task)}`;
  }

  // A quantity that is written in one way needs no unit.
  #units(units) {
    this.#unit.hidden = units.length < 2;
    this.#unit.dataset.only = units[0].id;
    const only = byId("task-only");
    only.hidden = units.length > 1 || !units[0].symbol;
    only.textContent = units[0].symbol;
    this.#unit.replaceChildren(el("option", { value: "" }, say("unit")), ...units.map((u) => el("option", { value: u.id }, u.symbol)));
  }

  /** Says what is wrong with the answer as it is typed. */
  wrong(text) {
    const note = byId("task-wrong");
    note.textContent = text;
    note.hidden = !text;
    if (text) this.#box.setAttribute("aria-invalid", "true");
    else this.#box.removeAttribute("aria-invalid");
    if (text) this.#box.focus();
  }

  #result(task) {
    const box = byId("task-result"), says = { right: say("Right"), close: say("Close"), off: say("Off") };
    box.hidden = !task.judged;
    if (!task.judged) return box.replaceChildren();
    const item = copy("part-ruling");
    item.classList.add(levels[task.judged]);
    item.querySelector("details").remove();
    const right = [task.right, task.right_unit].filter(Boolean).join("\u202f");
    fill(item, { word: says[task.judged], why: say("Your answer: {yours}. The calculator’s: {right}", { yours: task.yours, right }), do: task.mistake ? say("Likely mistake: {mistake}", { mistake: task.mistake }) : "" });
    box.replaceChildren(el("ol", { class: "verdict" }, item));
  }
}
