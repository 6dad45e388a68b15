// Turns an answer that says what to mix into entries for the log: texts by key, as the form of a mix has them. Numbers
// are handed on as the core has written them.

import { pouredIn } from "./log-offer.js";

/** The entries that an answer makes: { title, values }, the title blank where there is only one. */
export function mixesOf({ id, form, report }) {
  const list = report.lists.find((l) => l.key === pouredIn[id]);
  if (!list) return [];
  const at = Object.fromEntries(list.columns.map((c, i) => [c.key, i]));
  const cups = new Map();
  for (const row of list.rows) {
    const title = at.cup === undefined ? "" : row[at.cup].text;
    if (!cups.has(title)) cups.set(title, []);
    cups.get(title).push(row);
  }
  return [...cups].map(([title, rows]) => {
    const values = new Map();
    rows.forEach((row, i) => part(values, `poured_part.${i + 1}.`, row, at));
    if (id === "job") fromJob(values, title, form, report);
    else copy(form, "", values, ["mixed_ago", "product"]);
    return { title, values };
  });
}

function part(values, prefix, row, at) {
  values.set(prefix + "poured_name", row[at.part].text);
  figure(values, prefix + "poured_volume", row[at.volume]);
  figure(values, prefix + "poured_mass", row[at.mass]);
}

// A figure as a person would type it.
function figure(values, key, f) {
  if (!f?.unit_id) return;
  values.set(key, f.typed);
  values.set(key + ".unit", f.unit_id);
}

// What the job's own form knows of the product in a cup.
function fromJob(values, title, form, report) {
  const listed = (key) => report.lists.find((l) => l.key === key);
  const label = listed("labels")?.rows.find((row) => row[0].text === title);
  const amounts = listed("amounts");
  const nth = amounts?.rows.findIndex((row) => row[0].text === label?.[1].text) ?? -1;
  if (nth < 0) return;
  values.set("product", label[1].text);
  const coat = coatRows(form)[nth];
  if (!coat) return;
  const about = form.get(coat + "carrier") === "water" ? ["voc", "water_share"] : ["voc"];
  if (form.get(coat + "solids_for") !== "unthinned") about.push("volume_solids");
  // Of several cups nobody knows which part of the film each has made.
  const column = (key) => amounts.columns.findIndex((c) => c.key === key);
  if (amounts.rows[nth][column("cups")].typed === "1") {
    figure(values, "area", amounts.rows[nth][column("area")]);
    about.push("dry_film");
  }
  copy(form, coat, values, about);
}

function copy(form, prefix, values, keys) {
  for (const key of keys) {
    if (!form.has(prefix + key)) continue;
    values.set(key, form.get(prefix + key));
    const unit = form.get(prefix + key + ".unit") ?? form.get(`${prefix.split(".")[0]}.${key}.unit`);
    if (unit) values.set(key + ".unit", unit);
  }
}

// The rows of the table of coats, in order.
function coatRows(form) {
  const numbers = new Set([...form.keys()].filter((key) => key.startsWith("coat.")).map((key) => Number(key.split(".")[1])).filter(Number.isInteger));
  return [...numbers].sort((a, b) => a - b).map((n) => `coat.${n}.`);
}
