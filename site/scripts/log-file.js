// The log as a CSV file. The core writes it, some entries at a time.
import { download } from "./download.js";
import { entriesOf, rowsOf } from "./log-months.js";
import { ask } from "./log-store.js";
import { notify } from "./notices.js";
import { parse } from "./state.js";
import { say } from "./words.js";

const atOnce = 200;
const written = ["mixed_on", "clock", "product", "mixed_volume", "mixed_mass", "mix_density", "voc", "water_share", "mixed_ago", "booth_name", "painter", "left_mass"];
const pouredKeys = ["poured_name", "poured_mass", "poured_mass.unit", "poured_volume", "poured_volume.unit"];
const lineBreak = "\r\n";
const mark = "\uFEFF"; // tells spreadsheets that the file is UTF-8

/** Saves the mixes of some months, "2026-11", in order of time. */
export async function saveFile(months, settings) {
  const lines = [];
  let head, bad = 0;
  for (const month of months) {
    const entries = (await entriesOf(month)).reverse();
    for (let i = 0; i < entries.length; i += atOnce) {
      const report = await write(entries.slice(i, i + atOnce), settings);
      bad += report.bad;
      head ??= words(report, "csv_head");
      lines.push(words(report, "csv_lines"));
    }
  }
  const there = lines.filter((text) => text !== undefined);
  if (there.length === 0) return notify(say("There is nothing to save in these months."));
  const name = months.length > 1 ? `mix-log-${months[0]}-to-${months.at(-1)}.csv` : `mix-log-${months[0]}.csv`;
  download(name, mark + [head, ...there].join(lineBreak) + lineBreak, "text/csv;charset=utf-8");
  notify(bad > 0 ? say("Saved as {name}. {n} entries could not be read and are not in it.", { name, n: bad }) : say("Saved as {name}.", { name }));
}

// The report for some entries, without those that cannot be read.
async function write(entries, settings, bad = 0) {
  const form = rowsOf(entries, written);
  let n = 0;
  entries.forEach((entry, i) => {
    const own = parse(entry.form);
    for (let k = 1; own.has(`poured_part.${k}.poured_name`); k++) {
      form.set(`pour.${++n}.poured_of`, String(i + 1));
      for (const key of pouredKeys) if (own.has(`poured_part.${k}.${key}`)) form.set(`pour.${n}.${key}`, own.get(`poured_part.${k}.${key}`));
    }
  });
  if (settings.has("csv_units")) form.set("csv_units", settings.get("csv_units"));
  const report = await ask("mix-csv", form);
  if (report.problems.length === 0) return { ...report, bad };
  const wrong = new Set(report.problems.map(({ field }) => {
    const [table, row] = field.split(".");
    return Number(table === "pour" ? form.get(`pour.${row}.poured_of`) : row) - 1;
  }));
  const rest = entries.filter((_, i) => !wrong.has(i));
  if (rest.length === 0 || rest.length === entries.length) return { figures: [], bad: bad + entries.length };
  return write(rest, settings, bad + wrong.size);
}

const words = (report, key) => report.figures.find((f) => f.key === key)?.text;
