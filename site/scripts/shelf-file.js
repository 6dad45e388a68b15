// The shelf as one file: JSON that a person can read, with a version, its values as texts by key just as a link has them.
// What comes in is believed in nothing: its shape is looked at piece by piece, and only texts are taken from it.
import { download } from "./download.js";
import { kinds, nameKeys, textOf } from "./shelf-store.js";
import { parse } from "./state.js";
import { say } from "./words.js";

const mark = "shelf"; // what the file says it is
const version = 1;

const largest = { file: 20e6, items: 20000, keys: 600, text: 200 };

// Keys as forms have them: "dry_film", "dry_film.unit", "pair.2.humidity", "units", "units.film".
const keyForm = /^(?:[a-z][a-z0-9_]*(?:\.[1-9]\d{0,3}\.[a-z][a-z0-9_]*)?(?:\.unit)?|units\.[a-z-]+)$/;
const idForm = /^[0-9a-z]{1,40}$/;

/** Why a file is refused, in words for the person. */
export class Refused extends Error {}

/** The text of a file that holds items. */
export function fileText(items) {
  const list = items.map(({ id, kind, name, form }) => ({ id, kind, name, form: Object.fromEntries(parse(form)) }));
  return JSON.stringify({ spraywright: mark, version, items: list }, null, 1) + "\n";
}

/** Hands items to the person as a file, called after what it holds. */
export function exportItems(items, name = "shelf") {
  const plain = name.normalize("NFD").replace(/[^A-Za-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 40).toLowerCase() || "shelf";
  download(`spraywright-${plain}.json`, fileText(items), "application/json");
}

/** Reads a file: its items, each { id, kind, name, form } with the form as text. It throws Refused. */
export async function readItems(file) {
  if (file.size > largest.file) throw new Refused(say("This file is too large to be a shelf. Nothing was taken from it."));
  let data;
  try {
    data = JSON.parse(await file.text());
  } catch {
    throw new Refused(say("This file cannot be read: it is no JSON, or it is cut off. Nothing was taken from it."));
  }
  if (!isObject(data) || data.spraywright !== mark) throw new Refused(say("This file is not a shelf. Nothing was taken from it."));
  if (data.version !== version) throw new Refused(say("This file is of another version than this page knows. Open the newest version of the site and try again."));
  only(data, ["spraywright", "version", "items"], say("The file"));
  if (!Array.isArray(data.items) || data.items.length > largest.items) throw new Refused(say("This file has no list of items, or one that is too long. Nothing was taken from it."));
  const ids = new Set();
  return data.items.map((item, i) => readItem(item, say("Item {n}", { n: i + 1 }), ids));
}

const isObject = (x) => typeof x === "object" && x !== null && !Array.isArray(x);

function only(object, names, where) {
  const strange = Object.keys(object).find((name) => !names.includes(name));
  if (strange !== undefined) throw new Refused(say("{where} has “{name}”, which has no place there. Nothing was taken from the file.", { where, name: strange.slice(0, 40) }));
}

function readItem(item, where, ids) {
  if (!isObject(item) || !kinds.includes(item.kind) || !isObject(item.form)) throw new Refused(say("{where} is nothing that the shelf holds. Nothing was taken from the file.", { where }));
  only(item, ["id", "kind", "name", "form"], where);
  const { id, kind } = item;
  if (id !== undefined && (typeof id !== "string" || !idForm.test(id) || ids.has(id))) throw new Refused(say("{where} has no name of its own in the file, or one that stands twice. Nothing was taken from the file.", { where }));
  ids.add(id);
  const form = readForm(item.form, where), name = form.get(nameKeys[kind])?.trim();
  if (!name) throw new Refused(say("{where} does not say what it is called. Nothing was taken from the file.", { where }));
  return { id, kind, name, form: textOf(kind, form) };
}

function readForm(form, where) {
  const entries = Object.entries(form), read = new Map();
  if (entries.length > largest.keys) throw new Refused(say("{where} has more entries than any form. Nothing was taken from the file.", { where }));
  for (const [key, text] of entries) {
    if (!keyForm.test(key) || typeof text !== "string" || text.length > largest.text) {
      throw new Refused(say("{where} has an entry that no form has: “{name}”. Nothing was taken from the file.", { where, name: key.slice(0, 40) }));
    }
    if (text.trim()) read.set(key, text);
  }
  return read;
}
