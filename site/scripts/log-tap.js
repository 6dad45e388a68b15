// Logs one of the mixes that an answer makes.
import { el } from "./dom.js";
import { mixesOf } from "./log-from.js";
import { check, edit, keep, takeOut, usual } from "./log-store.js";
import { notify } from "./notices.js";
import { write } from "./state.js";
import { say } from "./words.js";

/** Logs the nth mix of an answer at once, or goes to the page on which it can be changed first. Says whether it was logged. */
export async function logOne(answer, n, changeFirst) {
  const mix = mixesOf(answer)[n];
  if (!mix) return;
  const values = new Map([...mix.values, ...(await usual())]);
  if (changeFirst) return edit(write(values));
  let checked;
  try {
    checked = await check(values);
  } catch (error) {
    return notify(error.message);
  }
  if (checked.wrong) return edit(write(values)); // its page says what is missing
  const entry = await keep(checked.form);
  if (entry) told(entry, checked.report, checked.form.get("product"));
  return Boolean(entry);
}

// What was logged, in the core's words, with ways to change it and to take it out again.
function told(entry, report, product) {
  const v = report.figures.find((f) => f.key === "mix_volume") ?? report.figures.find((f) => f.key === "mix_mass");
  const amount = `${v.text}\u202f${v.unit}`;
  notify(product ? say("Logged: {amount} of {product}.", { amount, product }) : say("Logged: {amount} of a product without a name.", { amount }), {
    [product ? say("Change it") : say("Name it")]: () => edit("id=" + entry.id),
    [say("Undo")]: () => takeOut(entry, say("Taken out of the log.")),
    [say("Close")]: undefined,
  }).append(el("a", { class: "plain", href: "log.html" }, say("See the log")));
}
