// Puts forms through the built site's core, without a browser:
//
//   node testdata/run.mjs dist < requests.jsonl > reports.jsonl
//
// A request is a line {"id":"wet-film","form":{"dry_film":"60","volume_solids":"45","coats":"2"}}; its report is the
// line in the same place of the output. A line that is no request stops the run with exit code 2.
import { resolve } from "node:path";
import { createInterface } from "node:readline";
import { start } from "./core.mjs";

const dist = process.argv[2];
if (!dist) fail("say where the built site is: node testdata/run.mjs dist < requests.jsonl");
const calculate = await start(resolve(dist)).catch((error) => fail(`no core in ${dist}: ${error.message}`));

let line = 0;
for await (const text of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
  line++;
  if (text.trim() === "") continue;
  await write(calculate(...read(text)) + "\n");
}
process.exit(0); // the core would wait for more calls

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
