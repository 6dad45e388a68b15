// Times large forms in the built site's cores, each of which a person waits for and so has to come within a second:
//
//   node testdata/scale.mjs dist
//
// a job of 300 parts and a day of 100 jobs, made of the demo's over and over.
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { start } from "./core.mjs";

const most = 1000; // ms
const dist = resolve(process.argv[2]);
const read = (file) => new URLSearchParams(readFileSync(new URL(file, import.meta.url), "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#")).join("&"));

// rows are a table's rows, by number, as lists of [column, text].
function rows(form, table) {
  const found = new Map();
  for (const [key, text] of form) {
    const [name, n, column] = key.split(".");
    if (name !== table || column === undefined || !/^\d+$/.test(n)) continue;
    if (!found.has(n)) found.set(n, []);
    found.get(n).push([column, text]);
  }
  return [...found.values()];
}

// again puts count rows into a table: its own over and over, changed by what change makes of a column's text in a round.
function again(form, table, count, change = (column, text) => text) {
  const own = rows(form, table);
  for (let i = 0; i < count; i++) {
    for (const [column, text] of own[i % own.length]) form.set(`${table}.${i + 1}.${column}`, change(column, text, Math.floor(i / own.length)));
  }
}

function parts() {
  const form = read("demo/job.txt");
  again(form, "part", 300, (column, text, round) => (column === "name" ? `${text} ${round + 1}` : column === "count" ? "1" : text));
  return form;
}

function jobs() {
  const form = read("demo/day.txt"), named = rows(form, "job").length;
  for (const key of [...form.keys()]) if (key.startsWith("break.") || key.endsWith(".promised_by")) form.delete(key);
  const rounds = (column, text, round) => (round > 0 && (column === "job_name" || column === "of_job") ? `${text} ${round + 1}` : text);
  again(form, "coat", Math.floor((rows(form, "coat").length * 100) / named), rounds);
  again(form, "job", 100, rounds);
  form.set("tried", "0");
  return form;
}

let late = false;
for (const [what, core, form] of [["a job of 300 parts", "job", parts()], ["a day of 100 jobs, its first plan", "day", jobs()]]) {
  const calculate = await start(dist, core), times = [];
  let report;
  for (let i = 0; i < 5; i++) {
    if (core === "job") form.set("humidity", 60 + i);
    else form.set("clock", `8:0${i}`);
    const from = performance.now();
    report = JSON.parse(calculate(core, form + "&working=later"));
    times.push(performance.now() - from);
  }
  for (const { field, message } of report.problems.slice(0, 3)) console.log(`  ${field}: ${message}`);
  const shown = report.figures.length + report.lists.length;
  console.log(`${what}: the first ${times[0].toFixed(0)} ms, the quickest of five ${Math.min(...times).toFixed(0)} ms; ${shown} figures and lists`);
  late ||= shown === 0 || Math.min(...times) > most;
}
if (late) console.error(`scale: over the limit of ${most} ms, or without an answer`);
process.exit(late ? 1 : 0);
