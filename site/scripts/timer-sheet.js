// A pot life that follows the temperature. The core works it out from where the cup has stood; here are only its forms.
import { Core } from "./core.js";
import { after, minutes, now } from "./clock.js";
import { sentence } from "./problems.js";
import { alter, ending, shifted } from "./timer-store.js";
import { store, write } from "./state.js";

let booth, shelf;

/** Whether a timer knows what it takes to follow the temperature. */
export const follows = (t) => Boolean(t.sheet?.pot_life && t.sheet.pot_life_at && t.sheet.air);

/** The form of the cup's age at a moment, for the core and for its own page. */
export function cupForm(t, at = now()) {
  const form = new Map(Object.entries(t.sheet));
  if (store.get("units")) form.set("units", store.get("units"));
  [...t.stays, here(t, at)].forEach((stay, i) => {
    for (const [key, text] of Object.entries(stay)) form.set(`stay.${i + 1}.${key}`, text);
  });
  return form;
}

// Where the cup stands now, and for how long.
function here(t, at) {
  const { air, "air.unit": unit } = t.sheet;
  return { stood_for: minutes(t.since, at), stood_at: air, ...(unit ? { "stood_at.unit": unit } : {}) };
}

/** A link to the page that shows the working, filled in as things stand. */
export const working = (t) => `cup-age.html?timer=${encodeURIComponent(t.id)}#${write(cupForm(t))}`;

/** Moves the cup to another temperature, { air, "air.unit" } as typed. Returns what the core objects to, or nothing. */
export async function moveTo(t, air) {
  booth ??= new Core("booth.wasm");
  const at = now();
  const next = { ...t, sheet: { ...t.sheet, ...air }, stays: [...t.stays, here(t, at)], since: at };
  if (!air["air.unit"]) delete next.sheet["air.unit"];
  const form = cupForm(next, at);
  for (const key of [...form.keys()]) if (key.startsWith(`stay.${next.stays.length + 1}.`)) form.delete(key); // it has only just got there
  const report = await booth.report("cup-age", write(form));
  const timer = report.figures.find((f) => f.timer)?.timer;
  if (!timer) return report.problems.map(sentence).join(" ");
  const { sheet, stays, since } = next;
  await alter(t.id, (old) => ({ ...ending(old, timer.marks[0].minutes), sheet, stays, since }));
  return "";
}

/** Asks the core for what is left of a time that was entered by hand. */
export function timeLeft(form) {
  shelf ??= new Core("shelf.wasm");
  return shelf.report("time-left", write(form));
}

/** Has a timer begin so long ago, { begun_ago, "begun_ago.unit" } as typed. Returns what the core objects to, or nothing. */
export async function beganAgo(t, ago) {
  const report = await timeLeft(new Map([["timed", "flash"], ["time_least", "1"], ...Object.entries(ago)]));
  const timer = report.figures.find((f) => f.timer)?.timer;
  if (!timer || report.problems.length > 0) return report.problems.map(sentence).join(" ");
  const begun = after(now(), -timer.ago);
  await alter(t.id, (old) => shifted(old, begun - old.begun));
  return "";
}
