// Entries of the log: { id, day, form }, the form as the text that a link would have.
import { get, Conflict, freshId, put, remove, told } from "./db.js";
import { Core } from "./core.js";
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { withShopUnits } from "./shop-units.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

let core;

/** Whether the record is kept in US units. */
export const inUS = () => store.get("units") === "us";

/** The core's report for one of the log's calculators. */
export function ask(id, form) {
  core ??= new Core("shelf.wasm");
  const whole = new Map(form);
  if (!whole.has("units")) whole.set("units", inUS() ? "us" : "si"); // whatever the mixes were typed in
  if (id === "mix-record") return core.report(id, write(withShopUnits(whole)));
  // Permits in the US count gallons and pounds: an ounce of VOC beside fluid ounces of paint is soon misread.
  if (inUS()) whole.set("units.volume", "gal").set("units.mass", "lb");
  return core.report(id, write(whole));
}

const two = (n) => String(n).padStart(2, "0");

/** Today, and the time, by the device's clock. */
export function today() {
  const d = new Date();
  return { day: `${d.getFullYear()}-${two(d.getMonth() + 1)}-${two(d.getDate())}`, time: `${d.getHours()}:${two(d.getMinutes())}` };
}

/** What is the same from one mix to the next: when, where and who. */
export async function usual() {
  const values = new Map([["mixed_on", today().day], ["clock", today().time]]);
  const booth = store.get("inuse:booth") && (await get("profile", store.get("inuse:booth")).catch(() => undefined));
  const name = (booth && parse(booth.form).get("booth_name")) || store.get("log-booth");
  if (name) values.set("booth_name", name);
  if (store.get("log-painter")) values.set("painter", store.get("log-painter"));
  return values;
}

/** Has the core look at an entry and adds what it has worked out, in full: volume and weight. wrong is its report where it is no
 * entry yet. */
export async function check(values) {
  const report = await ask("mix-record", values);
  if (report.problems.length > 0) return { wrong: report };
  const form = new Map(values);
  for (const [key, from] of [["mixed_volume", "mix_volume"], ["mixed_mass", "mix_mass"]]) {
    const f = report.figures.find((g) => g.key === from);
    if (!f || form.has(key)) continue;
    form.set(key, f.full);
    form.set(key + ".unit", f.unit_id);
  }
  return { form, report };
}

/** Writes an entry, a new one or a changed one, and returns it as stored; undefined where storage failed, which it
 * tells. Another tab's change is for the caller to settle: see Conflict. */
export async function keep(form, entry = { id: freshId() }) {
  store.set("log-booth", form.get("booth_name") ?? "");
  store.set("log-painter", form.get("painter") ?? "");
  const plain = new Map([...form].filter(([key]) => key !== "units" && !key.startsWith("units.")));
  return written({ ...entry, day: form.get("mixed_on").trim(), form: write(plain) });
}

/** Writes an entry as it is. */
export async function written(entry) {
  try {
    return (await put("mix", entry))[0];
  } catch (error) {
    if (error instanceof Conflict) throw error;
    notify(told(error, say("It could not be logged: this browser refused to write. Nothing in the log has changed, and what you typed still stands.")));
  }
}

/** Takes an entry out, and offers it back, which back is told of. It reports whether that was done. */
export async function takeOut(entry, says, back) {
  try {
    await remove("mix", entry.id);
  } catch (error) {
    notify(told(error, say("It could not be removed: this browser refused to write.")));
    return false;
  }
  notify(says, { [say("Undo")]: async () => (await written(entry)) && back?.(), [say("Close")]: undefined });
  return true;
}

// An entry on its way to the page that changes it: its id, or the values of a new one.

export const hand = (text) => store.set("log-hand", text);

export function handed() {
  const text = store.get("log-hand");
  store.set("log-hand", "");
  return text;
}

/** Goes to the page on which an entry is changed. A link is followed, because that works in the one file too. */
export function edit(text) {
  if (!hand(text)) return notify(say("This browser keeps nothing, so that the entry cannot be taken to another page."));
  const link = el("a", { href: "mix-record.html", hidden: "" });
  document.body.append(link);
  link.click();
  link.remove();
}
