// Part of every calculator's page: one tap logs a mix from the answer that says how to make it, and the transfer
// efficiency that the last weighed cup gave is offered to forms that ask for one.
import { el } from "./dom.js";
import { arrivedByLink } from "./shelf-shown.js";
import { store } from "./state.js";
import { say } from "./words.js";

/** The calculators whose answer says what to mix, and the list that says it. */
export const pouredIn = { job: "pour", mix: "component", "from-one-part": "component", "part-used-cup": "component", "over-pour": "addition", "cup-graduations": "mark" };

export function offerLogging(main) {
  let answer, logging = false;
  main.addEventListener("answer", ({ detail }) => {
    answer = detail;
    buttons(main, detail);
    offerTransfer(main, detail);
  });
  main.addEventListener("click", async ({ target }) => {
    const button = target.closest("[data-log]");
    if (!button || !answer || logging) return;
    logging = true; // two quick taps are one mix
    try {
      const { logOne } = await import("./log-tap.js");
      if (await logOne(answer, Number(button.dataset.log), button.dataset.first === "change")) count(button.parentElement);
    } finally {
      logging = false;
    }
  });
  if (main.dataset.calculator !== "mix-record") return;
  const linked = arrivedByLink("mix-record"); // before the page takes the link for its own
  import("./log-editor.js").then(({ editEntries }) => editEntries(main, linked, answer));
}

// Beside the button, where the thumb is, stands how often it has logged.
function count(tools) {
  const times = tools.querySelector(".logged") ?? tools.appendChild(el("b", { class: "logged", role: "status" }));
  times.dataset.times = String(Number(times.dataset.times ?? 0) + 1);
  times.textContent = say("Logged here: {n}", { n: times.dataset.times });
}

// The card draws its lists anew, so the buttons are put back after each answer.
function buttons(main, { id, report }) {
  const holder = pouredIn[id] && main.querySelector(`[data-out="${pouredIn[id]}"]`);
  if (!holder) return;
  if (report.problems.length > 0 && holder.hidden) return;
  const cups = holder.querySelectorAll(".pour-cup"), places = cups.length > 0 ? [...cups] : [...holder.querySelectorAll(".list")];
  places.forEach((place, i) => {
    if (!place.querySelector("[data-log]")) place.append(logButtons(i, cups.length > 0 ? place.querySelector(".cup")?.firstChild.textContent : ""));
  });
}

function logButtons(i, cup) {
  return el("p", { class: "log-tools" },
    el("button", { type: "button", class: "plain", "data-log": String(i), ...(cup ? { "aria-label": say("Log this mix: {cup}", { cup }) } : {}) }, say("Log this mix")),
    el("button", { type: "button", class: "plain", "data-log": String(i), "data-first": "change", ...(cup ? { "aria-label": say("Change first, then log: {cup}", { cup }) } : {}) }, say("Change first, then log")));
}

const key = "transfer_efficiency";

/** What the last weighed cup gave, as text for a form; blank for none. */
export const lastTransfer = () => store.get("log-transfer");

function offerTransfer(main, { form }) {
  const field = main.querySelector(`#form [data-field="${key}"]`), known = lastTransfer();
  if (!field) return;
  const there = field.querySelector(".log-transfer"), wanted = known && !form.has(key);
  if (!wanted) return there?.remove();
  if (there) return;
  const button = el("button", { type: "button", class: "plain log-transfer" }, say("Take {te} % from your last weighed cup", { te: known }));
  button.addEventListener("click", () => main.dispatchEvent(new CustomEvent("fill", {
    detail: { values: new Map([[key, known], [key + ".unit", ""]]), says: say("Transfer efficiency filled in from your last weighed cup. It is true for parts of that kind only.") },
  })));
  field.append(button);
}
