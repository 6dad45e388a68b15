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
      const n = Number(button.dataset.log), cup = cupsOf(answer.report, pouredIn[answer.id])[n];
      await logOne(answer, n, { cup, changeFirst: button.dataset.first === "change", counted: () => buttons(main, answer) });
    } finally {
      logging = false;
    }
  });
  if (main.dataset.calculator !== "mix-record") return;
  const linked = arrivedByLink("mix-record"); // before the page takes the link for its own
  import("./log-editor.js").then(({ editEntries }) => editEntries(main, linked, answer));
}

// The cups that an answer has poured, those that are alike as one: { title, all, key, done }. all is how many the card
// has of it, blank where it does not say, done how many of them have been logged.
function cupsOf(report, key) {
  const poured = report.lists.find((l) => l.key === key), labels = report.lists.find((l) => l.key === "labels");
  if (!poured) return [];
  const titles = poured.columns[0].key === "cup" ? [...new Set(poured.rows.map((row) => row[0].text))] : [""];
  return titles.map((title) => {
    const rows = title ? poured.rows.filter((row) => row[0].text === title) : poured.rows;
    const what = rows.map((row) => row.map((f) => f.text).join(" ")).join("; "); // other amounts are other cups
    return { title, all: labels?.rows.filter((row) => row[0].text === title).length || undefined, key: what, done: logged().get(what) ?? 0 };
  });
}

// How often each has been logged is kept for the day: a phone forgets its pages while the paint is sprayed.

function logged() {
  try {
    const { day, times } = JSON.parse(store.get("logged-here"));
    if (day === new Date().toDateString()) return new Map(times);
  } catch {
    // nothing was logged, or it cannot be read
  }
  return new Map();
}

/** Counts one more of a cup, or one less. */
export function count(cup, by) {
  const times = logged();
  times.set(cup.key, Math.max(0, (times.get(cup.key) ?? 0) + by));
  store.set("logged-here", JSON.stringify({ day: new Date().toDateString(), times: [...times] }));
}

// The card draws its lists anew, so the buttons are put back after each answer.
function buttons(main, { id, report }) {
  const holder = pouredIn[id] && main.querySelector(`[data-out="${pouredIn[id]}"]`);
  if (!holder) return;
  if (report.problems.length > 0 && holder.hidden) return;
  const cups = holder.querySelectorAll(".pour-cup"), places = cups.length > 0 ? [...cups] : [...holder.querySelectorAll(".list")];
  const known = cupsOf(report, pouredIn[id]);
  places.forEach((place, i) => {
    const tools = place.querySelector(".log-tools") ?? place.appendChild(logButtons(i, known[i]?.title));
    name(tools, known[i]);
  });
}

function logButtons(i, cup) {
  return el("p", { class: "log-tools" },
    el("button", { type: "button", class: "plain", "data-log": String(i) }),
    el("button", { type: "button", class: "plain", "data-log": String(i), "data-first": "change", ...(cup ? { "aria-label": say("Change first, then log: {cup}", { cup }) } : {}) }, say("Change first, then log")),
    el("b", { class: "logged", role: "status" }));
}

// The button names the cup that it logs; beside it, where the thumb is, stands how many have been.
function name(tools, { title, all, done }) {
  const [log, , times] = tools.children;
  log.textContent = all > 1 && done < all ? say("Log cup {n} of {all}", { n: done + 1, all }) : say("Log this mix");
  if (title) log.setAttribute("aria-label", say("{does}: {cup}", { does: log.textContent, cup: title }));
  times.textContent = done === 0 ? "" : all ? say("Logged: {n} of {all}", { n: done, all }) : say("Logged here: {n}", { n: done });
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
