// The log by months: what was mixed in one, and its totals, which are worked out once and kept until a mix of that month
// changes.
import { all, Conflict, get, put } from "./db.js";
import { ask } from "./log-store.js";
import { sentence } from "./problems.js";
import { parse } from "./state.js";
import { say } from "./words.js";

const atOnce = 200; // entries, or lines, in one question to the core

/** The month so many before another, "2026-11". */
export function before(month, n) {
  const [y, m] = month.split("-").map(Number);
  return new Date(Date.UTC(y, m - 1 - n, 1)).toISOString().slice(0, 7);
}

/** The entries of a month, the latest first. */
export async function entriesOf(month) {
  const found = await all("mix", "day", month + "-01", month + "-31");
  return found.sort((a, b) => (a.day === b.day ? (a.id < b.id ? 1 : -1) : a.day < b.day ? 1 : -1));
}

// What the totals need of an entry; the rest only makes the question longer.
const counted = ["mixed_on", "clock", "product", "mixed_volume", "mixed_mass", "mix_density", "voc", "water_share", "left_mass", "booth_name", "painter"];

/** Rows of the log's table, as the core takes them. */
export function rowsOf(entries, keys = counted, table = "mix") {
  const form = new Map();
  entries.forEach((entry, i) => {
    const own = parse(entry.form);
    for (const key of keys) {
      for (const k of [key, key + ".unit"]) if (own.has(k)) form.set(`${table}.${i + 1}.${k}`, own.get(k));
    }
  });
  return form;
}

/** A month as the core adds it up, in reports of some entries each: { entries, report }. bad are entries that it cannot
 * read. */
export async function reportsOf(month, entries) {
  const parts = [], bad = [];
  for (let i = 0; i < entries.length; i += atOnce) {
    let some = entries.slice(i, i + atOnce);
    const question = () => ask("mix-log", new Map([...rowsOf(some), ["log_month", month], ["working", "none"]]));
    let report = await question();
    const wrong = new Set(report.problems.map((p) => Number(p.field.split(".")[1]) - 1));
    if (wrong.size > 0) {
      bad.push(...some.filter((_, k) => wrong.has(k)));
      some = some.filter((_, k) => !wrong.has(k));
      if (some.length > 0) report = sound(await question());
    }
    if (some.length > 0) parts.push({ entries: some, report });
  }
  return { parts, bad };
}

/** A report that has an answer. One that has none must not be taken for a sum of nothing. */
export function sound(report) {
  if (report.problems.length > 0) throw new Error(sentence(report.problems[0]));
  return report;
}

const listOf = (report, key) => report.lists.find((l) => l.key === key) ?? { rows: [], columns: [] };

// A total as a row that can be added up again, with its numbers as the core wrote them out in full.
function line(month, product, row, columns) {
  const cell = (key) => row[columns.findIndex((c) => c.key === key)];
  const values = [["mixed_on", month], ["product", product]];
  for (const [key, from] of [["mixes", "mixes"], ["voc_unknown", "voc_unknown"], ["mixed_volume", "volume"], ["mixed_mass", "mass"], ["voc_weighed", "voc_mass"]]) {
    const f = cell(from);
    if (f.unit_id) values.push([key, f.full], [key + ".unit", f.unit_id]);
  }
  return values;
}

/** The lines of a report of one month: of each product, and of all. */
function linesOf(month, report) {
  const products = listOf(report, "product_total"), months = listOf(report, "month_total");
  const own = products.rows.filter((row) => row[1].typed !== "0").map((row) => line(month, row[0].text, row, products.columns));
  const whole = months.rows.filter((row) => row[0].text === month).map((row) => line(month, say("All products"), row, months.columns));
  return { products: own, whole };
}

/** Lines as rows of the log's table. */
export function asRows(lines) {
  return new Map(lines.flatMap((values, i) => values.map(([key, text]) => [`mix.${i + 1}.${key}`, text])));
}

/** The totals of a month as lines to add up further, { products, whole, bad }, from what is kept or worked out anew; bad
 * is how many entries cannot be read. */
export async function totalsOf(month) {
  for (let tries = 0; ; tries++) {
    const record = (await get("month", month)) ?? { id: month };
    if (record.lines?.bad !== undefined) return record.lines;
    const { parts, bad } = await reportsOf(month, await entriesOf(month));
    const lines = { ...(await together(month, parts.map(({ report }) => linesOf(month, report)))), bad: bad.length };
    try {
      await put("month", { ...record, lines });
      return lines;
    } catch (error) {
      if (!(error instanceof Conflict) || tries > 3) return lines; // changed meanwhile, or storage is full
    }
  }
}

// The lines of a month from those of its parts.
async function together(month, parts) {
  if (parts.length < 2) return parts[0] ?? { products: [], whole: [] };
  const add = async (lines) => linesOf(month, sound(await ask("mix-log", new Map([...asRows(lines), ["log_month", month], ["working", "none"]]))));
  const products = [];
  for (const some of shares(parts.flatMap((p) => p.products))) products.push(...(await add(some)).products);
  return { products, whole: (await add(parts.flatMap((p) => p.whole))).whole };
}

/** Lines in shares that the core can take at once, all those of a product in one, whatever its case. */
export function shares(lines) {
  const named = new Map(), all = [];
  for (const line of lines) {
    const name = line.find(([key]) => key === "product")[1].toLowerCase();
    if (!named.has(name)) named.set(name, []);
    named.get(name).push(line);
  }
  for (const some of named.values()) {
    if (all.length === 0 || all.at(-1).length + some.length > atOnce) all.push([]);
    all.at(-1).push(...some);
  }
  return all;
}

/** A report with the rows that another has for a list, and the working behind them. */
export function withList(report, key, other) {
  const theirs = other.lists.find((l) => l.key === key);
  if (!theirs) return report;
  const behind = report.steps.length, moved = (numbers) => numbers.map((n) => n + behind);
  const rows = theirs.rows.map((row) => row.map((f) => ({ ...f, steps: moved(f.steps) })));
  const own = report.lists.find((l) => l.key === key);
  const lists = own ? report.lists.map((l) => (l === own ? { ...l, rows: [...l.rows, ...rows] } : l)) : [...report.lists, { ...theirs, rows }];
  return { ...report, lists, steps: [...report.steps, ...other.steps.map((s) => ({ ...s, from: moved(s.from) }))] };
}
