// What is on the shelf: data sheets, guns, booths and shops. Each is a record { id, kind, name, form }, its form the
// text that a link would have.
import { all, Conflict, freshId, kept, put, remove, told } from "./db.js";
import { notify } from "./notices.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

/** The kinds, and the key that an item of each is known by. */
export const nameKeys = { "data-sheet": "product", gun: "gun_name", booth: "booth_name", shop: "shop" };

export const kinds = Object.keys(nameKeys);

/** The kinds of which one may be in use. */
export const usable = ["gun", "booth", "shop"];

/** What one of a kind is called. */
export const kindName = (kind) => ({
  "data-sheet": say("Data sheet"), gun: say("Gun"), booth: say("Booth"), shop: say("Shop"),
})[kind];

/** The text to keep of a form. Only a shop keeps the units to answer in. */
export const textOf = (kind, form) => write(new Map([...form].filter(([key]) => kind === "shop" || !(key === "units" || key.startsWith("units.")))));

/** Every item of a kind, or the first few. */
export const itemsOf = (kind, most) => all("profile", "kind", kind, kind, most);

/** Writes items, all or none. It returns them as stored; undefined where storage failed, which it tells. Another tab's
 * change is for the caller to settle: see Conflict. */
export async function keepAll(...items) {
  try {
    return await put("profile", ...items);
  } catch (error) {
    if (error instanceof Conflict) throw error;
    notify(told(error, say("It could not be kept: this browser refused to write. Nothing on the shelf has changed, and what you typed still stands.")));
  }
}

/** A new item from a form. */
export function itemFrom(kind, form) {
  return { id: freshId(), kind, name: form.get(nameKeys[kind]) ?? "", form: textOf(kind, form) };
}

/** Takes an item off the shelf. It reports whether that was done. */
export async function takeOff(item) {
  try {
    await remove("profile", item.id);
    return true;
  } catch (error) {
    notify(told(error, say("It could not be removed: this browser refused to write.")));
    return false;
  }
}

/** The form of an item, under another name where one is given. */
export function formOf(item, name) {
  const form = parse(item.form);
  if (name !== undefined) form.set(nameKeys[item.kind], name);
  return form;
}

/** Items whose name is written alike. */
export const alike = (a, b) => plain(a) === plain(b);

/** A name as names are compared: however it is spaced or composed (Unicode NFC), and in small letters. */
export const plain = (name) => name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

/** Whether another item of a kind goes by a name: two of one name could not be told apart where they are chosen. */
export const taken = async (kind, name, id) => (await itemsOf(kind)).some((item) => item.id !== id && alike(item.name, name));

/** The names of a kind as freeOf takes them. */
export const namesOf = async (kind) => new Set((await itemsOf(kind)).map((item) => plain(item.name)));

/** The name, or where it is taken the first of "name (2)", "name (3)" that is not. */
export function freeOf(names, name) {
  if (!names.has(plain(name))) return name;
  let n = 2;
  while (names.has(plain(`${name} (${n})`))) n++;
  return `${name} (${n})`;
}

/** The same for one name. */
export const freeName = async (kind, name) => freeOf(await namesOf(kind), name);

// Which item of a kind is in use is a matter of this device, and no part of the item.

export const inUse = (kind) => store.get("inuse:" + kind);

/** Marks an item as the one of its kind in use, or none. report is the answer to a shop's form, for the units it names. */
export function use(kind, id, form, report) {
  const done = store.set("inuse:" + kind, id);
  if (kind === "shop") rememberUnits(id ? form : new Map(), report);
  if (!done) notify(say("It could not be kept: this browser refused to write. Nothing on the shelf has changed, and what you typed still stands."));
  return done;
}

/** Remembers the units of the shop in use, which every page then answers in. */
export function rememberUnits(form, report) {
  const text = report?.figures.find((f) => f.key === "link_units")?.text ?? "";
  const system = form.get("units");
  store.set("shop-units", [system ? "units=" + system : "", text].filter(Boolean).join("&"));
  if (system) store.set("units", system);
}

/** Says that nothing lasts, where this browser refuses to keep anything, and reports whether it does. */
export async function tellRefused(save) {
  if (await kept()) return false;
  const actions = save ? { [say("Export")]: save, [say("Close")]: undefined } : undefined;
  notify(say("This browser keeps nothing: what is on the shelf lasts only until you leave this page."), actions);
  return true;
}
