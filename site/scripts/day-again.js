// Planning again from now. Nothing counts as done that nobody has ticked off: of what was to begin before now, the person
// says what is.
import { minuteOfDay, writeTime } from "./clock.js";
import { inPlan, stepsOf } from "./day-steps.js";
import { byId, el, fill } from "./dom.js";
import { say } from "./words.js";

export class Again {
  #root = byId("day-again-sheet");
  #list = this.#root.querySelector("ul");
  #search;
  #changes;
  #now; // in minutes after midnight
  #spoilt; // the step whose cup is gone, where that is why

  constructor(search, changes) {
    this.#search = search;
    this.#changes = changes;
    byId("day-again").addEventListener("click", () => this.open());
    this.#list.addEventListener("change", ({ target }) => this.#follow(target));
    const doing = { plan: () => this.#plan(), all: () => this.#boxes.forEach((box) => { box.checked = true; }), close: () => this.#root.close() };
    this.#root.addEventListener("click", ({ target }) => (target === this.#root ? this.#root.close() : doing[target.closest("button")?.dataset.again]?.()));
    this.#root.addEventListener("close", () => search.keep(false));
  }

  get #boxes() {
    return [...this.#list.querySelectorAll("input")];
  }

  /** Asks what is done, where anything was to begin by now, and plans again. spoilt is a step whose cup is gone: if it is
   * not done, it waits for another cup, and so do the later ones of its job. */
  open(spoilt) {
    this.#now = minuteOfDay();
    this.#spoilt = spoilt;
    const begun = begunBy(this.#now, this.#search.report).filter(({ of }) => !spoilt || spoilt.done || !waits(of, spoilt.of));
    this.#list.replaceChildren(...begun.map(({ of, from, until, says }) => el("li", {}, el("label", { class: "tick-line" },
      el("input", { type: "checkbox", value: of }), el("span", {}, el("b", {}, say("{from} to {until}", { from, until })), " ", says)))));
    if (begun.length === 0) return this.#plan();
    const time = writeTime(this.#now);
    for (const part of this.#root.querySelectorAll("[data-again-part]")) part.hidden = (part.dataset.againPart === "gone") !== Boolean(spoilt); // that it was mixed is no use then
    fill(this.#root, { title: spoilt ? say("This cup is gone: plan again from {time}", { time }) : say("Plan again from {time}", { time }), wrong: "" });
    this.#search.keep(true);
    this.#root.showModal();
  }

  // A coat is not on without those before it.
  #follow(box) {
    const boxes = this.#boxes, at = boxes.indexOf(box);
    boxes.forEach((other, i) => {
      if (jobOf(other) === jobOf(box) && (box.checked ? i < at : i > at)) other.checked = box.checked;
    });
  }

  async #plan() {
    const counted = this.#boxes.filter((box) => box.checked).map((box) => box.value).join(" ");
    const why = this.#spoilt ? { day_change: "gone", step_of: this.#spoilt.of } : { day_change: "now" };
    const change = { ...why, to_time: writeTime(this.#now), counted };
    if (!this.#root.open) return this.#changes.tell(change);
    const wrong = await this.#changes.make(change);
    fill(this.#root, { wrong });
    if (!wrong) this.#root.close();
  }
}

const jobOf = (box) => box.value.split("-")[0];

// Whether a step is one of a job, or follows it there.
const waits = (of, one) => {
  const [a, b] = [of, one].map((name) => name.split("-").map(Number));
  return a[0] === b[0] && (a[1] > b[1] || (a[1] === b[1] && a[2] >= b[2]));
};

// The steps that are not done and were to begin by a time, or to have their cup mixed by then, in the order of time.
function begunBy(minutes, report) {
  const steps = stepsOf(report, "by_place");
  if (steps.length === 0) return [];
  const now = inPlan(minutes, steps), begun = new Set(steps.filter((s) => s.start < now && s.look !== "rinse").map((s) => s.of));
  const own = steps.filter((s, i) => s.main && !s.done && begun.has(s.of) && steps.findIndex((x) => x.main && x.of === s.of) === i);
  return own.sort((a, b) => a.start - b.start);
}
