// The slider of a lesson: any number of the form, with the graph of the answer against it. The numbers it goes through come
// from the core, and so do the answers; here they are only handed on.
import { el } from "./dom.js";
import { ask, reportOf } from "./lesson-ask.js";
import { inputs } from "./lesson-inputs.js";
import { whyNot } from "./loading.js";
import { picture } from "./picture.js";
import { sentence } from "./problems.js";
import { say } from "./words.js";

let ids = 0;

const withoutRow = (key) => key.replace(/^([^.]+)\.\d+\./, "$1.");

export class Slider {
  root;
  #main;
  #pick;
  #form = new Map();
  #choice;
  #wide = el("input", { type: "checkbox" });
  #range;
  #says = el("p", { class: "lesson-says" }); // the slider itself says the same to a screen reader
  #graph = el("div");
  #put = el("button", { type: "button", class: "plain" }, say("Put this number into the form"));
  #points = []; // { typed, shown, y, ys, why } for each place of the slider
  #figure;
  #turn = 0;
  #drawn = 0;
  #swept; // what the points were worked out from

  constructor(main, pick) {
    this.#main = main;
    this.#pick = pick;
    const id = `lesson-${++ids}`;
    this.#choice = el("select", { id: id + "-of" });
    this.#range = el("input", { type: "range", min: "0", max: "0", step: "1", id: id + "-at" });
    this.root = el("section", { class: "lesson-slider", hidden: "" }, el("h3", {}, say("Try other numbers")),
      el("div", { class: "field choice" }, el("label", { for: id + "-of" }, say("Change")), el("div", { class: "entry" }, this.#choice)),
      el("label", { class: "lesson-wide" }, this.#wide, el("span", {}, say("All that is allowed"))),
      el("div", { class: "field" }, el("label", { for: id + "-at" }, say("Slide, or use the arrow keys")), this.#range), this.#says, this.#graph, el("p", {}, this.#put));
    this.root.addEventListener("input", (event) => event.stopPropagation()); // none of these is the form's
    this.#choice.addEventListener("change", () => this.#sweep());
    this.#wide.addEventListener("change", () => this.#sweep());
    this.#range.addEventListener("input", () => this.#show());
    this.#put.addEventListener("click", () => this.#fill());
  }

  /** Follows the page. What the answer's working was given comes first in the list. */
  update(form, report) {
    this.#form = form;
    this.#figure = this.#pick(report);
    const entered = this.#figure.steps.map((n) => report.steps[n - 1]).filter((s) => s.kind === "entered").map((s) => s.label);
    const keys = this.#keys();
    this.root.hidden = keys.length === 0 || this.#figure.unit_id === undefined;
    if (this.root.hidden) return;
    const first = (key) => entered.some((label) => label === this.#label(key) || label.startsWith(this.#label(withoutRow(key)) + " ("));
    const sorted = [...keys.filter(first), ...keys.filter((key) => !first(key))], before = this.#choice.value;
    if (sorted.join() !== [...this.#choice.options].map((o) => o.value).join()) {
      this.#choice.replaceChildren(...sorted.map((key) => el("option", { value: key }, this.#label(key))));
      this.#choice.value = keys.includes(before) ? before : sorted[0];
    }
    this.#sweep();
  }

  // The numbers in the form, and those that stand there from the start.
  #keys() {
    const known = inputs[this.#main.dataset.calculator] ?? {};
    const typed = [...this.#form.keys()].filter((key) => Object.hasOwn(known, withoutRow(key)));
    const standing = [...this.#main.querySelectorAll(".field.number:not([hidden]) input[data-default]")].map((c) => c.name).filter((key) => Object.hasOwn(known, withoutRow(key)) && !typed.includes(key));
    const order = [...this.#main.querySelectorAll("#form [data-field]")].map((f) => f.dataset.field);
    const at = (key) => order.indexOf(withoutRow(key) === key ? key : key.split(".")[0]); // a table stands where its rows do
    return [...typed, ...standing].sort((a, b) => at(a) - at(b));
  }

  #label(key) {
    const [table, n] = key.split("."), bare = withoutRow(key);
    if (key === bare) return this.#main.querySelector(`[data-field="${CSS.escape(key)}"]`)?.dataset.label ?? this.#labelIn(key);
    const row = this.#main.querySelector(`[data-table="${CSS.escape(table)}"]`)?.dataset.rowName ?? "";
    return say("{column} ({row} {n})", { column: this.#labelIn(bare), row, n });
  }

  #labelIn(bare) {
    const [table, column] = bare.split(".");
    const blank = this.#main.querySelector(`[data-table="${CSS.escape(table)}"] template`)?.content;
    return blank?.querySelector(`[data-field="${CSS.escape(`${table}.0.${column}`)}"]`)?.dataset.label ?? bare;
  }

  get #text() {
    const key = this.#choice.value;
    return this.#form.get(key) ?? this.#main.querySelector(`input[name="${CSS.escape(key)}"]`)?.dataset.default ?? "";
  }

  // Works out the answer for each number that the slider goes through.
  async #sweep() {
    const key = this.#choice.value, input = inputs[this.#main.dataset.calculator][withoutRow(key)];
    const unit = this.#form.get(key + ".unit") ?? this.#form.get(withoutRow(key) + ".unit") ?? input.unit;
    const question = { text: this.#text, unit, own: input.unit, min: String(input.min), max: String(input.max), whole: input.whole ? "1" : "", wide: this.#wide.checked ? "1" : "" };
    const from = JSON.stringify([key, question, [...this.#form]]), turn = ++this.#turn;
    if (from === this.#swept) return;
    try {
      const { steps, at } = await ask("scale", question);
      const points = [];
      for (const step of steps ?? []) {
        points.push(await this.#point(key, step));
        if (turn !== this.#turn) return;
      }
      this.#swept = from;
      this.#points = points;
      this.#range.max = String(Math.max(0, points.length - 1));
      this.#range.value = String(at?.[0] ?? 0);
      this.#show();
    } catch (error) {
      this.#alarm(whyNot(error));
    }
  }

  async #point(key, { typed, shown }) {
    const report = await reportOf(this.#main.dataset.core, this.#main.dataset.calculator, new Map([...this.#form, [key, typed]]));
    const f = this.#pick(report);
    if (f?.unit_id !== undefined) return { typed, shown, y: String(f.value), ys: [f.text, f.unit].filter(Boolean).join("\u202f"), why: "" };
    const problem = report.problems.find((p) => p.code !== "missing") ?? report.problems[0];
    return { typed, shown, y: "", ys: "", why: problem ? sentence(problem) : say("The answer does not have it then.") };
  }

  async #show() {
    const n = Number(this.#range.value), point = this.#points[n], turn = ++this.#drawn;
    this.#put.hidden = !point;
    if (!point) {
      this.#alarm(say("This number cannot be slid: it is not one that can be read."));
      return this.#graph.replaceChildren();
    }
    const says = point.ys ? say("{what} {x}: {answer} {y}", { what: this.#label(this.#choice.value), x: point.shown, answer: this.#figure.label, y: point.ys }) : say("{x}: {why}", { x: point.shown, why: point.why });
    this.#says.removeAttribute("role");
    this.#says.textContent = says;
    this.#range.setAttribute("aria-valuetext", says);
    const list = (name) => this.#points.map((p) => p[name]).join("\n");
    const { picture: p, gaps } = await ask("graph", { x: list("typed"), xs: list("shown"), y: list("y"), ys: list("ys"), why: list("why"), at: String(n), xlabel: this.#label(this.#choice.value), ylabel: this.#figure.label }).catch(() => ({}));
    if (turn !== this.#drawn || !p) return;
    this.#graph.replaceChildren(picture(p), ...gaps.map((g) => el("p", { class: "lesson-gap" }, g.says)));
  }

  #alarm(text) {
    this.#says.setAttribute("role", "alert");
    this.#says.textContent = text;
  }

  #fill() {
    const { typed, shown } = this.#points[Number(this.#range.value)], key = this.#choice.value;
    this.#main.dispatchEvent(new CustomEvent("fill", { detail: { values: new Map([[key, typed]]), says: say("{what} is now {x}.", { what: this.#label(key), x: shown }) } }));
  }
}
