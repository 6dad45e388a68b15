// The sheet of one step: what it is and when, and what can be done with it.
import { isTime, minuteOfDay, readTime, writeTime } from "./clock.js";
import { byId, el, fill } from "./dom.js";
import { stepNamed } from "./day-steps.js";
import { barOf } from "./day-timeline.js";
import { timerButton } from "./timer-button.js";
import { byKind } from "./timer-words.js";
import { say } from "./words.js";

const nearest = 5; // minutes of the buttons beside the time

export class Sheet {
  #root = byId("day-sheet");
  #search;
  #changes;
  #step;

  constructor(main, search, changes) {
    this.#search = search;
    this.#changes = changes;
    const doing = {
      earlier: () => this.#nudge(-nearest),
      later: () => this.#nudge(nearest),
      hold: () => this.#make({ day_change: "hold", to_time: this.#box("hold").value }),
      free: () => this.#make({ day_change: "free" }),
      now: () => this.#make({ day_change: "done", end_time: writeTime(minuteOfDay()) }),
      planned: () => this.#make({ day_change: "done" }),
      at: () => this.#make({ day_change: "done", to_time: this.#box("started").value, end_time: this.#box("ended").value }),
      undo: () => this.#make({ day_change: "undo" }),
      close: () => this.#root.close(),
    };
    this.#root.addEventListener("click", ({ target }) => {
      if (target === this.#root) return this.#root.close(); // beside it
      const button = target.closest("button");
      if (button?.dataset.painter) this.#make({ day_change: "hold", by_painter: button.dataset.painter });
      else if (button?.dataset.timer) this.#root.close();
      else doing[button?.dataset.day]?.();
    });
    this.#root.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || !event.target.matches("input")) return;
      event.preventDefault();
      doing[event.target.dataset.enter]();
    });
    this.#root.addEventListener("close", () => {
      this.#search.keep(false);
      this.#back();
    });
  }

  /** Opens the sheet of a step. says is what was touched, where that is not the step itself. */
  open(of, says = "") {
    const s = (this.#step = stepNamed(this.#search.report, of));
    if (!s) return;
    fill(this.#root, {
      says: s.says, times: say("{from} to {until}", { from: s.from, until: s.until }), who: s.who, note: s.note,
      latest: s.latest && say("No later than {time}", { time: s.latest }), touched: says && say("You touched: {what}", { what: says }), wrong: "",
    });
    const clock = (time) => time.split(" ")[0]; // past midnight the day stands behind it
    this.#fillBox("hold", clock(s.from));
    this.#fillBox("started", clock(s.from));
    this.#fillBox("ended", clock(s.until));
    for (const part of this.#root.querySelectorAll("[data-when-done]")) part.hidden = (part.dataset.whenDone === "yes") !== s.done;
    this.#root.querySelector('[data-day="free"]').hidden = !s.pinned;
    this.#root.querySelector('[data-day-part="held"]').hidden = !s.pinned;
    this.#root.querySelector("details").open = false;
    this.#painters(s);
    byId("day-timers").replaceChildren(...s.timers.map(({ f, place }) => byKind(timerButton(f, place), f.timer)));
    this.#search.keep(true);
    this.#root.showModal();
  }

  // Another painter, for what a painter does, where there are several.
  #painters(s) {
    const some = Number(/^[2-8]$/.exec(this.#search.formOf("painters"))?.[0] ?? 1);
    const numbers = s.who && some > 1 && !s.done ? Array.from({ length: some }, (_, i) => String(i + 1)) : [];
    byId("day-painters").replaceChildren(...numbers.map((n) => el("button", { type: "button", class: "action", "data-painter": n }, say("Painter {n}", { n }))));
    byId("day-painters").parentElement.hidden = numbers.length === 0;
  }

  #box(name) {
    return byId(`day-${name}`);
  }

  #fillBox(name, text) {
    this.#box(name).value = text;
  }

  #nudge(by) {
    const box = this.#box("hold");
    if (isTime(box.value)) box.value = writeTime(Math.round((readTime(box.value) + by) / nearest) * nearest);
  }

  async #make(change) {
    const wrong = await this.#changes.make({ ...change, step_of: this.#step.of });
    fill(this.#root, { wrong });
    if (!wrong) this.#root.close();
  }

  // The focus goes back to the step, which may have been drawn anew.
  #back() {
    if (document.activeElement === document.body) barOf(this.#step.of)?.focus({ preventScroll: true });
  }
}
