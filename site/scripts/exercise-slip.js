// The result slip: what was asked, answered and found, to print or to copy as text.
import { byId, el, show } from "./dom.js";
import { counted, score } from "./exercise-record.js";
import { today } from "./log-store.js";
import { notify } from "./notices.js";
import { say } from "./words.js";

export class Slip {
  #title;
  #record;
  #box = byId("slip");

  constructor({ title, record, keep }) {
    this.#title = title || say("Exercises");
    this.#record = record;
    const name = byId("slip-name");
    name.value = record.name;
    name.addEventListener("input", () => {
      record.name = name.value;
      keep();
      this.refresh();
    });
    byId("slip-print").addEventListener("click", () => print());
    byId("slip-copy").addEventListener("click", () => this.#copy());
    addEventListener("beforeprint", () => this.#fill());
  }

  show() {
    this.#box.hidden = false;
    this.refresh();
    show(this.#box);
    this.#box.focus({ preventScroll: true });
  }

  hide() {
    this.#box.hidden = true;
  }

  /** Brings an open slip up to date. */
  refresh() {
    if (!this.#box.hidden) this.#fill();
  }

  #fill() {
    byId("slip-head").textContent = this.#head();
    byId("slip-score").textContent = this.#score();
    byId("slip-tasks").replaceChildren(...this.#record.slots.map((slot, i) => el("li", {}, ...this.#lines(slot, i).map((line) => el("p", {}, line)))));
  }

  #head() {
    return [this.#title, this.#record.name, today().day, say("Seed: {seed}", { seed: this.#record.seed })].filter(Boolean).join(" · ");
  }

  #score() {
    const { tasks, answered, right, close, off } = score(this.#record);
    return say("{right} right, {close} close, {off} off; {answered} of {tasks} answered", { right, close, off, answered, tasks });
  }

  // The first answer counts. How many others there were says the last line.
  #lines(slot, i) {
    const t = counted(slot), n = i + 1;
    if (!t) return [say("Task {n}: {state}", { n, state: say("not answered yet") })];
    const states = { right: say("right"), close: say("close"), off: say("off") };
    const lines = [
      say("Task {n}: {state}", { n, state: states[t.judged] }),
      `${t.title} — ${t.label}`,
      t.given.map((g) => g.join(" ")).join("; "),
      say("Your answer: {yours}. The calculator’s: {right}", { yours: t.yours, right: t.right }),
    ];
    if (t.mistake) lines.push(t.mistake);
    if (t.draw > 1) lines.push(say("Asked for other numbers before answering: {n}", { n: t.draw - 1 }));
    if (slot.tries.length > 1) lines.push(say("More answers, for practice: {n}", { n: slot.tries.length - 1 }));
    return lines;
  }

  async #copy() {
    const blocks = this.#record.slots.map((slot, i) => this.#lines(slot, i).join("\n"));
    const text = [this.#head(), this.#score(), ...blocks].join("\n\n") + "\n";
    try {
      await navigator.clipboard.writeText(text);
      notify(say("The slip is copied as text."));
    } catch {
      notify(say("This browser does not let pages copy. Select the slip and copy it by hand."));
    }
  }
}
