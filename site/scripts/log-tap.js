// Logs one of the mixes that an answer makes.
import { el } from "./dom.js";
import { mixesOf } from "./log-from.js";
import { count } from "./log-offer.js";
import { check, edit, keep, takeOut, usual } from "./log-store.js";
import { notify } from "./notices.js";
import { write } from "./state.js";
import { say } from "./words.js";

/** Logs the nth mix of an answer at once, or goes to the page on which it can be changed first. cup is what it is poured in,
 * and counted is called when another number of it has been logged. More than the card has are logged only when asked. */
export async function logOne(answer, n, { cup, changeFirst, counted }) {
  const mix = mixesOf(answer)[n];
  if (!mix) return;
  const values = new Map([...mix.values, ...(await usual())]);
  if (changeFirst) return edit(write(values));
  const done = (by) => {
    count(cup, by);
    counted();
  };
  if (cup.done < (cup.all ?? Infinity)) return logIt(values, done);
  const says = cup.all > 1 ? say("All {all} cups of this kind are logged already.", { all: cup.all }) : say("This cup is logged already.");
  notify(says, { [say("Log one more")]: () => logIt(values, done), [say("Leave it")]: undefined });
}

async function logIt(values, done) {
  try {
    const checked = await check(values);
    if (checked.wrong) return edit(write(values)); // its page says what is missing
    const entry = await keep(checked.form);
    if (!entry) return;
    done(1);
    told(entry, checked.report, checked.form.get("product"), done);
  } catch (error) {
    notify(error.message);
  }
}

// What was logged, in the core's words, with ways to change it and to take it out again.
function told(entry, report, product, done) {
  const v = report.figures.find((f) => f.key === "mix_volume") ?? report.figures.find((f) => f.key === "mix_mass");
  const amount = `${v.text}\u202f${v.unit}`;
  notify(product ? say("Logged: {amount} of {product}.", { amount, product }) : say("Logged: {amount} of a product without a name.", { amount }), {
    [product ? say("Change it") : say("Name it")]: () => edit("id=" + entry.id),
    [say("Undo")]: async () => (await takeOut(entry, say("Taken out of the log."), () => done(1))) && done(-1),
    [say("Close")]: undefined,
  }).append(el("a", { class: "plain", href: "log.html" }, say("See the log")));
}
