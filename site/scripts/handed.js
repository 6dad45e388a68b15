// Data sheets that one shop hands on to another by link: what is in the link, and what each calculator takes from them.
// Values stay texts by key, as everywhere.
import { suits } from "./shelf-fits.js";
import { rowPattern } from "./rows.js";

const table = "sheet";

/** How many sheets a link can hold: the most rows of calc/shelf's table. */
export const mostSheets = 12;

/** The data sheets in a form, in order: each its name and its form. */
export function sheetsOf(form) {
  const rows = new Map();
  for (const [key, text] of form) {
    const [t, n, column, unit] = key.split(".");
    if (t !== table || column === undefined || !rowPattern.test(n)) continue;
    if (!rows.has(n)) rows.set(n, new Map());
    rows.get(n).set(unit === undefined ? column : `${column}.${unit}`, text);
  }
  // A link may give the unit of a column for all rows.
  for (const sheet of rows.values()) {
    for (const column of [...sheet.keys()].filter((key) => !key.includes("."))) {
      const unit = form.get(`${table}.${column}.unit`);
      if (unit && !sheet.has(column + ".unit")) sheet.set(column + ".unit", unit);
    }
  }
  return [...rows].sort(([a], [b]) => Number(a) - Number(b)).map(([, sheet]) => ({ name: sheet.get("product") ?? "", form: sheet }));
}

/** The calculator that sheets open in, as the build has described it. */
export function targetOf(id) {
  const line = document.querySelector(`#targets [data-of="${CSS.escape(id || "job")}"]`);
  return line && { of: line.dataset.of, page: line.dataset.page, table: line.dataset.rows, keys: new Set(line.dataset.keys.split(" ")), title: line.textContent };
}

/** The form of a calculator filled from sheets: one with a table of products takes them all, any other the first. */
export function formFor(target, sheets, units) {
  const form = new Map(units ? [["units", units]] : []);
  const has = (key) => target.keys.has(key);
  for (const [i, sheet] of sheets.slice(0, target.table ? undefined : 1).entries()) {
    for (const [key, text] of sheet.form) {
      const base = key.replace(/\.unit$/, "");
      if (has(base) && suits(base, has, sheet.form)) form.set((target.table ? `${target.table}.${i + 1}.` : "") + key, text);
    }
  }
  return form;
}
