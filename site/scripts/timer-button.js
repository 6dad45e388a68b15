// The button beside a time of the answer that starts a timer for it, and what it does.
import { el } from "./dom.js";
import { say } from "./words.js";

/** The button for a figure that can be timed; nothing for others. place is where the report has it: a figure's key, or
 * "list.row.column". */
export function timerButton(f, place, what = f.label) {
  if (!f.timer) return undefined;
  return el("button", { type: "button", class: "plain time", "data-timer": place, "aria-label": say("Start timer: {what}", { what }) }, say("Start timer"));
}

/** Part of every calculator's page: starts timers from its answer. */
export function offerTimers(main) {
  let answer;
  main.addEventListener("answer", ({ detail }) => { answer = detail; });
  main.addEventListener("click", async ({ target }) => {
    const button = target.closest("[data-timer]");
    if (!button || !answer) return;
    const timer = find(answer.report, button.dataset.timer), form = answer.form; // as they are at the touch
    const { start } = await begun();
    if (timer) start(timer, form);
  });
}

// The sound has to be woken in the touch itself, so that all is loaded as soon as a finger comes near.
const begun = () => import("./timer-start.js");
addEventListener("pointerover", ({ target }) => target.closest?.("[data-timer]") && begun(), { passive: true });

function find(report, place) {
  const [key, row, column] = place.split(".");
  if (row === undefined) return report.figures.find((f) => f.key === key)?.timer;
  return report.lists.find((l) => l.key === key)?.rows[row]?.[column]?.timer;
}
