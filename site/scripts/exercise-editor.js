// One exercise of a set as the trainer edits it: the calculator, the answer asked for, what its inputs are drawn from, and
// a task as a learner would get it.
import { byId, el } from "./dom.js";
import { settingsOf, task as askTask } from "./exercise-core.js";
import { asked } from "./exercise-task.js";
import { sentence } from "./problems.js";
import { say } from "./words.js";

let ids = 0;

export class Editor {
  root;
  settings; // what the link holds of it, by key
  #page;
  #plan;
  #draw = 1;
  #n = 1;
  #asked; // the text of the task shown last

  constructor(settings, page) {
    this.settings = settings;
    this.#page = page;
    this.#menu = byId("plan-menu").content.firstElementChild.cloneNode(true);
    if (!settings.has("of")) settings.set("of", this.#menu.value);
    this.#menu.value = settings.get("of");
    this.root = el("li", { class: "exercise-item" }, el("details", {},
      el("summary", {}, el("span", { class: "row-number" }), el("span", { class: "row-says" })),
      el("div", { class: "exercise-body" })));
    this.root.addEventListener("toggle", () => this.#opened(), true);
    this.root.addEventListener("input", (event) => this.#take(event.target));
    this.#menu.addEventListener("change", () => this.#another());
    this.#lay();
  }

  #menu;

  set number(n) {
    this.#n = n;
    this.root.querySelector(".row-number").textContent = String(n);
    this.root.querySelector(".row-says").textContent = this.#menu.selectedOptions[0].textContent;
  }

  /** What stands of it where it is closed. */
  get head() {
    return this.root.querySelector("summary");
  }

  open() {
    this.root.firstElementChild.open = true;
  }

  close() {
    this.root.firstElementChild.open = false;
  }

  #opened() {
    this.#asked = undefined;
    this.preview();
  }

  // Another calculator has other answers and inputs.
  #another() {
    const of = this.#menu.value;
    this.settings.clear();
    this.settings.set("of", of);
    this.#lay();
    this.#page.changed();
  }

  #lay() {
    this.#plan = byId("plan-" + this.settings.get("of"));
    const plan = this.#plan.content.firstElementChild.cloneNode(true);
    const ask = plan.querySelector("select");
    ask.prepend(el("option", { value: "" }, say("The main answer")));
    const inputs = [...plan.querySelectorAll("li")].map((li) => this.#input(li));
    const buttons = [[say("Up"), "up"], [say("Duplicate"), "copy"], [say("Remove"), "remove"]].map(([label, what]) => {
      const b = el("button", { type: "button", class: what === "remove" ? "plain warn" : "plain" }, label);
      b.addEventListener("click", () => this.#page.act(what));
      return b;
    });
    this.root.querySelector(".exercise-body").replaceChildren(
      field(say("Calculator"), this.#menu),
      field(say("Answer asked for"), named(ask, "ask", this.settings.get("ask"))),
      el("details", { class: "exercise-numbers" }, el("summary", {}, say("What the numbers are drawn from")),
        el("p", { class: "help" }, say("Write 60 for that number, 40..95 by 5 for a range, or 40; 60; 80 for one of these. Blank takes what stands beneath.")), ...inputs),
      el("div", { class: "card preview", role: "group", "aria-label": say("As a learner sees it") }),
      el("p", { class: "rowtools" }, ...buttons));
  }

  #input(li) {
    const { key, kind, words, rows } = li.dataset, label = li.querySelector("span").textContent;
    const optional = li.dataset.optional === undefined ? "" : say("Blank leaves it out unless the answer needs it.");
    if (kind === "choice") {
      const select = li.querySelector("select");
      select.prepend(el("option", { value: "" }, say("As the difficulty has it")), el("option", { value: "any" }, say("Drawn from all")));
      return field(label, named(select, key, this.settings.get(key)), optional);
    }
    const box = named(el("input", { type: "text", autocomplete: "off" }), key, this.settings.get(key));
    if (kind === "table") return field(say("{table}: how many rows", { table: label }), box, rows);
    if (kind === "words") return field(label, box, optional || words);
    const unit = named(li.querySelector("select"), key + ".unit", this.settings.get(key + ".unit"));
    unit.classList.add("unit");
    unit.setAttribute("aria-label", say("Unit of {label}", { label }));
    unit.prepend(el("option", { value: "" }, say("unit")));
    unit.value = this.settings.get(key + ".unit") ?? "";
    const f = field(label, box, "", unit.options.length > 2 ? unit : undefined);
    f.dataset.band = key;
    f.plan = { ...li.dataset, optional, symbol: (id) => [...unit.options].find((o) => o.value === id)?.textContent ?? "" };
    return f;
  }

  // Under a number stands what it is drawn from where it is blank.
  #bands() {
    const us = this.#page.link().get("units") === "us";
    for (const f of this.root.querySelectorAll("[data-band]")) {
      const { band, unit, bandUs, unitUs, optional, symbol } = f.plan;
      f.querySelector(".help").textContent = [`${us ? bandUs : band} ${symbol(us ? unitUs : unit)}`.trim(), optional].filter(Boolean).join(". ");
    }
  }

  #take(c) {
    const key = c.dataset.key;
    if (!key) return;
    if (c.value.trim()) this.settings.set(key, c.value.trim());
    else this.settings.delete(key);
  }

  /** Shows a task as a learner would get it, with its answer and what mistakes lead to. */
  async preview() {
    if (!this.root.firstElementChild.open) return;
    this.#bands();
    const link = this.#page.link(), seed = `${link.get("seed") ?? "preview"}/${this.#n}`;
    const settings = settingsOf(link, `q.${this.#n}.`, seed, this.#draw).set("show", "answer");
    const text = JSON.stringify([...settings, this.settings.get("of")]);
    if (text === this.#asked) return;
    this.#asked = text;
    const task = await askTask(this.#plan.dataset.core, this.settings.get("of"), settings).catch((error) => ({ problems: [{ message: error.message, fix: "" }] }));
    if (text === this.#asked) this.#show(task);
  }

  #show(task) {
    const box = this.root.querySelector(".preview");
    for (const c of this.root.querySelectorAll("[aria-invalid]")) c.removeAttribute("aria-invalid");
    if (task.problems.length > 0) {
      for (const p of task.problems) this.root.querySelector(`[data-key="${CSS.escape(withoutRow(p.field ?? ""))}"]`)?.setAttribute("aria-invalid", "true");
      box.replaceChildren(...task.problems.map((p) => el("p", { class: "wrong" }, p.fix ? sentence(p) : p.message)));
      return;
    }
    const again = el("button", { type: "button", class: "plain" }, say("Other numbers"));
    again.addEventListener("click", () => {
      this.#draw++;
      this.preview();
    });
    const traps = task.traps.map((t) => el("li", {}, el("b", {}, t.text), " ", t.says));
    box.replaceChildren(el("h3", {}, task.question),
      el("dl", { class: "task-given" }, ...task.given.map((g) => el("div", {}, el("dt", {}, g.label), el("dd", {}, g.text)))),
      el("p", { class: "task-asked" }, asked(task)),
      el("p", {}, el("b", {}, say("Answer: {right}", { right: [task.right, task.right_unit].filter(Boolean).join("\u202f") })), " ", again),
      el("details", { class: "traps" }, el("summary", {}, say("Wrong answers that are named: {n}", { n: traps.length })), el("ul", {}, ...traps)));
  }
}

const withoutRow = (key) => key.replace(/\.\d+\./, ".");

// A control known by the key that a link has for what it holds.
function named(control, key, value) {
  control.dataset.key = key;
  control.value = value ?? "";
  if (control.value !== (value ?? "")) control.append(el("option", { value, selected: "" }, value)); // a cell further down a list
  return control;
}

function field(label, control, help = "", unit) {
  control.id = `x-${++ids}`;
  control.removeAttribute("aria-label"); // the label beside it says it
  return el("div", { class: "field " + (control.tagName === "SELECT" ? "choice" : "words") }, el("label", { for: control.id }, label),
    el("div", { class: "entry" }, control, unit ?? ""), el("p", { class: "help" }, help));
}
