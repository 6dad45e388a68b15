// Which facts of an item a form, or a row of a table, takes, and how a fact reads.
import { rowPattern } from "./rows.js";
import { el } from "./dom.js";
import { say } from "./words.js";

const bake = (has, item) => has("drying") || item.get("drying") === "bake";

// A key means the same everywhere, but some facts stand for what they are only beside another.
const rules = {
  ratio: (has, item) => has("ratio_by") || item.get("ratio_by") === "volume",
  volume_solids: (has, item) => has("solids_for") || item.get("solids_for") !== "unthinned",
  dry_time: bake, dry_at: bake, dry_time_second: bake, dry_at_second: bake,
  voc: (has) => !has("voc_thinner"), // asks for the mix before more thinner
  dry_film: (has) => !has("film_least"), // the gauge reads through every coat
  air: (has) => !has("line_pressure"), // the compressor's, not the booth's
  humidity: (has) => !has("line_pressure"),
};

/** Whether a fact of an item stands for the same in a form that has these keys. */
export const suits = (key, has, item) => rules[key]?.(has, item) ?? true;

/** The fields of a form outside its tables, and its tables, by key. */
export function fieldsOf(form) {
  const fields = new Map();
  for (const f of form.querySelectorAll("[data-field]")) {
    if (f.dataset.table || !f.closest(".rows")) fields.set(f.dataset.field, f);
  }
  return fields;
}

/** The fields of a row of a table, by key. */
export function columnsOf(table) {
  const found = table.querySelector("template.row-edit").content.querySelectorAll("[data-field]");
  return new Map([...found].map((f) => [f.dataset.field.split(".").pop(), f]));
}

/** The values of an item that fit into fields: text and unit by key. A table is one value, its rows as { rest: text }. */
export function fitting(fields, item) {
  const has = (key) => fields.has(key), found = new Map();
  for (const [key, text] of item) {
    if (key.endsWith(".unit")) continue;
    const [table, n] = key.split(".");
    if (n !== undefined) {
      if (fields.get(table)?.dataset.table && rowPattern.test(n)) found.set(table, { rows: rowsOf(item, table) });
      continue;
    }
    const unit = item.get(key + ".unit") ?? "";
    if (has(key) && suits(key, has, item) && takes(fields.get(key), text, unit)) found.set(key, { text, unit });
  }
  return found;
}

const rowsOf = (item, table) => new Map([...item].filter(([key]) => key.startsWith(table + ".")));

// A field of choices, or of units, takes only what it offers.
function takes(field, text, unit) {
  if (field.dataset.table) return false;
  const units = field.querySelector("select.unit");
  if (unit && ![...(units?.options ?? [])].some((o) => o.value === unit)) return false;
  if (!field.matches(".choice")) return true;
  return [...field.querySelectorAll("option, input")].some((o) => o.value === text);
}

/** Sets the values of an item against a form: what is blank there, what differs, as changes. prefix is that of a row. */
export function against(fields, item, form, prefix = "") {
  const blank = [], differs = [];
  for (const [key, { text, unit, rows }] of fitting(fields, item)) {
    const field = fields.get(key), name = prefix + key;
    if (rows) {
      const own = rowsOf(form, key);
      const change = { field, key, old: own.size ? countRows(own) : "", new: countRows(rows), values: [...own].map(([k]) => [k, ""]).concat([...rows]) };
      if (own.size === 0) blank.push(change);
      else if (same(own, rows)) continue;
      else differs.push(change);
      continue;
    }
    const was = form.get(name) ?? "", wasUnit = form.get(name + ".unit") ?? columnUnit(form, prefix, key);
    const change = { field, key, old: was && reading(field, was, wasUnit), new: reading(field, text, unit), values: [[name, text], [name + ".unit", unit || ownIfColumn(field, form, prefix, key)]] };
    if (was === "") blank.push(change);
    else if (was !== text || plain(field, wasUnit) !== plain(field, unit)) differs.push(change);
  }
  return { blank, differs };
}

const columnUnit = (form, prefix, key) => (prefix && form.get(`${prefix.split(".")[0]}.${key}.unit`)) || "";
const ownUnit = (field) => field.querySelector("select.unit")?.dataset.own ?? "";
const plain = (field, unit) => unit || ownUnit(field);

// Where a link gives a whole column another unit, a value in the own one has to say so.
const ownIfColumn = (field, form, prefix, key) => (columnUnit(form, prefix, key) ? ownUnit(field) : "");

const same = (a, b) => a.size === b.size && [...a].every(([key, text]) => b.get(key) === text);

function countRows(rows) {
  const n = new Set([...rows.keys()].map((key) => key.split(".")[1])).size;
  return n === 1 ? say("1 row") : say("{n} rows", { n });
}

/** A fact as a person would say it. */
export function reading(field, text, unit) {
  if (!field) return text;
  const choice = [...field.querySelectorAll("option, input[type=radio]")].find((o) => o.value === text && !o.closest(".unit"));
  if (field.matches(".choice")) return (choice?.matches("input") ? choice.nextElementSibling : choice)?.textContent || text;
  const units = field.querySelector("select.unit");
  const symbol = units ? [...units.options].find((o) => o.value === (unit || units.dataset.own))?.textContent : field.querySelector("span.unit")?.textContent;
  return symbol ? `${text}\u202f${symbol}` : text;
}

/** What stood there and what would. */
export function oldAndNew(old, now) {
  return el("span", { class: "old-new" }, el("del", {}, old || say("blank")), el("span", { "aria-hidden": "true" }, " → "), el("ins", {}, now || say("blank")));
}

/** What differs between two forms, either way round, as lines: what the first says is crossed out. */
export function differences(fields, was, now) {
  const { blank, differs } = against(fields, now, was), gone = against(fields, was, now).blank;
  const line = (c, old, text) => el("li", {}, el("b", {}, c.field.dataset.label), " ", was.size === 0 ? el("ins", {}, text) : oldAndNew(old, text));
  return [...differs.map((c) => line(c, c.old, c.new)), ...blank.map((c) => line(c, "", c.new)), ...gone.map((c) => line(c, c.new, ""))];
}
