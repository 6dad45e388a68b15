// Puts forms through the built site's core, without a browser:
//
//   node testdata/run.mjs dist < requests.jsonl > reports.jsonl
//
// A request is a line {"id":"wet-film","form":{"dry_film":"60","volume_solids":"45","coats":"2"}}; its report is the
// line in the same place of the output. A line that is no request stops the run with exit code 2.
import { readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { createInterface } from "node:readline";
import { start } from "./core.mjs";

const dist = process.argv[2];
if (!dist) fail("say where the built site is: node testdata/run.mjs dist < requests.jsonl");
const cores = new Map(); // by name, each started when the first form needs it
const { calculators } = JSON.parse(await readFile(join(dist, "calculators.json"), "utf8").catch((error) => fail(`no site in ${dist}: ${error.message}`)));
const coreOf = new Map(calculators.map(({ id, core }) => [id, core]));

let line = 0;
for await (const text of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
  line++;
  if (text.trim() === "") continue;
  const [id, form] = read(text);
  await write((await calculate(id))(id, form) + "\n");
}
process.exit(0); // the core would wait for more calls

// calculate is the function of the core that holds a calculator. Any core refuses an id that none holds.
function calculate(id) {
  const core = coreOf.get(id) ?? "job";
  if (!cores.has(core)) cores.set(core, start(resolve(dist), core));
  return cores.get(core).catch((error) => fail(`no ${core} core in ${dist}: ${error.message}`));
}

function read(text) {
  let request;
  try {
    request = JSON.parse(text);
  } catch (error) {
    fail(`line ${line} is not JSON: ${error.message}`);
  }
  if (typeof request?.id !== "string" || typeof request.form !== "object" || request.form === null) {
    fail(`line ${line} needs an "id" and a "form"`);
  }
  return [request.id, new URLSearchParams(request.form).toString()];
}

// write waits until the text is taken, so that nothing is lost at the end.
function write(text) {
  return new Promise((done) => process.stdout.write(text, done));
}

function fail(words) {
  console.error(`run.mjs: ${words}`);
  process.exit(2);
}
