// Times one recalculation of the demo job in the built site's core:
//
//   node testdata/bench.mjs dist testdata/demo/job.txt
//
// The file has one key=value a line, written as in a link. Each call changes one number, as typing does.
import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { start } from "./core.mjs";

const [dist, demo] = process.argv.slice(2);
if (!existsSync(demo)) {
  console.log(`bench: ${demo} is not there yet; skipped`);
  process.exit(0);
}
const lines = readFileSync(demo, "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#"));
const form = new URLSearchParams(lines.join("&"));
const calculate = await start(resolve(dist), "job");

const warmUp = 50, longest = 10000; // calls; ms
const times = [];
const end = performance.now() + longest;
let report, text;
for (let i = 0; i < 2050 && performance.now() < end; i++) {
  form.set("humidity", 40 + (i % 20));
  text = form.toString();
  const from = performance.now();
  report = calculate("job", text);
  if (i >= warmUp) times.push(performance.now() - from);
}
const { problems } = JSON.parse(report);
if (problems.length > 0) {
  console.error("bench: the demo job has problems:", problems.map((p) => `${p.field}: ${p.message}`));
  process.exit(1);
}
times.sort((a, b) => a - b);
const at = (share) => times[Math.floor(share * (times.length - 1))].toFixed(2);
console.log(`job in WASM: p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, longest ${at(1)} ms over ${times.length} calls; form ${text.length} B, report ${report.length} B`);
process.exit(0);
