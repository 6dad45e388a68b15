// The call sheet of the day: a touch opens a step or ticks it off as done, and a line stands at the present time.
import { el } from "./dom.js";
import { readTime, writeTime } from "./clock.js";
import { inPlan, stepsOf } from "./day-steps.js";
import { byKind } from "./timer-words.js";
import { say } from "./words.js";

export class Calls {
  #changes;
  #open;
  #holder;
  #report;
  #now;

  constructor(main, changes, open) {
    this.#changes = changes;
    this.#open = open;
    this.#holder = main.querySelector('[data-out="call"]');
    this.#holder.addEventListener("click", (event) => this.#act(event));
    main.addEventListener("answer", ({ detail }) => {
      this.#report = detail.report;
      this.#dress();
    });
  }

  /** Marks the present time, in minutes after midnight; undefined for none. */
  now(minutes) {
    this.#now = minutes;
    this.#mark();
  }

  // The list is drawn anew where it has changed; then its rows get their buttons.
  #dress() {
    const list = this.#holder.querySelector(".clock-lines:not(.dressed)");
    if (!list) return;
    list.classList.add("dressed");
    const { rows } = this.#report.lists.find((l) => l.key === "call");
    const main = new Set(stepsOf(this.#report, "by_job").filter((s) => s.main).map((s) => `${s.of} ${s.says}`));
    for (const line of list.querySelectorAll("[data-of]")) {
      const what = line.querySelector(".clock-what"), says = what.textContent, { of } = line.dataset;
      what.replaceChildren(el("button", { type: "button", class: "clock-open", "data-open": of, "aria-haspopup": "dialog" }, says));
      if (main.has(`${of} ${says}`)) line.append(el("button", { type: "button", class: "clock-done", "data-done": of, "aria-label": say("Done: {step}", { step: says }) }, say("Done")));
    }
    for (const button of list.querySelectorAll("[data-timer]")) {
      const [, row, column] = button.dataset.timer.split(".");
      byKind(button, rows[row][column].timer);
    }
    this.#mark();
  }

  #act({ target }) {
    const { open, done } = target.closest("button")?.dataset ?? {};
    if (open) this.#open(open);
    // Who follows the day by the clock ticks off what has just been done, perhaps later than it was planned.
    if (done) this.#changes.tell({ day_change: "done", step_of: done, ...(this.#now === undefined ? {} : { end_time: writeTime(this.#now) }) });
  }

  #mark() {
    const list = this.#holder.querySelector(".clock-lines");
    list?.querySelector(".clock-now")?.remove();
    if (this.#now === undefined || !list) return;
    const now = inPlan(this.#now, stepsOf(this.#report, "by_place"));
    const next = [...list.querySelectorAll(".clock-line")].find((line) => readTime(line.querySelector(".clock-time .cell").textContent) > now);
    const mark = el("li", { class: "clock-now" }, say("Now {time}", { time: writeTime(this.#now) }));
    if (next) next.before(mark);
    else list.append(mark);
  }
}
