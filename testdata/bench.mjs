// Times every calculator in the built site's cores, and the demo job, against their limits:
//
//   node testdata/bench.mjs dist testdata/demo/job.txt
//
// The file has one key=value a line, written as in a link. Each call changes one number, as typing does, and asks as the
// page does: for the working later. A phone is reckoned to be four times slower than the machine that this runs on.
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { start } from "./core.mjs";

const slower = 4, mostCall = 1, mostJob = 8; // times; ms within which 99 of 100 calls must answer, on the phone
const [dist, demo] = process.argv.slice(2);
const { calculators } = JSON.parse(readFileSync(join(dist, "calculators.json"), "utf8"));
const at = (times, share) => slower * times[Math.floor(share * (times.length - 1))];
let over = false;

// The times in ms of calls that change one number back and forth, after some that warm the core up.
function times(calculate, id, form, key, calls) {
  const typed = Number(form.get(key));
  const took = [];
  let report = "";
  for (let i = -calls / 10; i < calls; i++) {
    if (key) form.set(key, typed * (1 + (i % 7) / 1000));
    const text = form + "&working=later", from = performance.now();
    report = calculate(id, text);
    if (i >= 0) took.push(performance.now() - from);
  }
  return { took: took.sort((a, b) => a - b), report };
}

// A form filled in with every example; a table has one row.
function example(inputs, form = new URLSearchParams(), prefix = "") {
  for (const { key, kind, rows, choices, example: filled, when } of inputs) {
    if (when && !when.in.includes(form.get(prefix + when.key))) continue;
    if (kind === "table") example(rows, form, `${prefix}${key}.1.`);
    else form.set(prefix + key, choices ? choices[0].key : filled);
  }
  return form;
}

const job = new URLSearchParams(readFileSync(demo, "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#")).join("&"));
const calls = [], unanswered = [];
for (const core of new Set(calculators.map((c) => c.core))) {
  const calculate = await start(resolve(dist), core);
  for (const { id, inputs } of calculators.filter((c) => c.core === core && c.id !== "job" && c.id !== "day")) {
    const form = example(inputs), key = inputs.find((i) => i.kind === "number" && form.has(i.key))?.key;
    const { took, report } = times(calculate, id, form, key, 400);
    if (JSON.parse(report).figures.length + JSON.parse(report).lists.length === 0) unanswered.push(id);
    else calls.push({ id, p99: at(took, 0.99) });
  }
  if (core !== "job") continue;
  const { took, report } = times(calculate, "job", job, "humidity", 1000);
  const { problems } = JSON.parse(report);
  if (problems.length > 0) throw new Error("the demo job has problems: " + problems.map((p) => `${p.field}: ${p.message}`));
  console.log(`the demo job, ${slower} times slower: median ${at(took, 0.5).toFixed(2)} ms, 99 of 100 within ${at(took, 0.99).toFixed(2)} ms; form ${`${job}`.length} B, report ${report.length} B`);
  over = at(took, 0.99) > mostJob;
}
calls.sort((a, b) => b.p99 - a.p99);
const told = ({ id, p99 }) => `${id} ${p99.toFixed(2)}`;
console.log(`${calls.length} calculators, ${slower} times slower, 99 of 100 calls within: ${calls.slice(0, 8).map(told).join(", ")}; the middle one ${told(calls[calls.length >> 1])} ms`);
if (unanswered.length > 0) console.log("not timed, for their examples give no answer by themselves: " + unanswered.join(", "));
const late = calls.filter(({ p99 }) => p99 > mostCall);
if (over || late.length > 0) {
  console.error(`bench: over the limit of ${mostJob} ms for the job or ${mostCall} ms for the others: ${over ? "the job, " : ""}${late.map(told).join(", ")}`);
  process.exit(1);
}
process.exit(0); // the cores would wait for more calls
