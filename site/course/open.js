// Starts the exercises of a course package, and tells the course how far the learner is. What goes wrong between the two is
// said in one line; the exercises go on without it.
import { begin } from "./exercise-keep.js";
import { Cmi5 } from "./cmi5.js";
import { compact, expand } from "./record.js";
import { Scorm } from "./scorm.js";
import { byId } from "../scripts/dom.js";
import { scoreOf } from "../scripts/exercise-core.js";
import { open } from "../scripts/exercise.js";
import { say } from "../scripts/words.js";

const { course: kind, pass } = document.documentElement.dataset;
const course = kind === "cmi5" ? new Cmi5() : new Scorm();
const needed = () => [...(pass ? [["pass", pass]] : []), ...course.needed()]; // what the course says comes before the package

let connected = false, last = Promise.resolve();

const line = (text) => { byId("course-says").textContent = text; };

// What did not get through, by what it was, is said until it has been tried again; each at the latest as the learner leaves.
const again = new Map();

// One after the other, so that a report never overtakes another.
function send(what, step, done) {
  if (!connected) return;
  last = last.then(step).then(() => {
    again.delete(what);
    if (done && connected && again.size === 0) line(done);
  }, (error) => {
    again.set(what, () => send(what, step, done));
    line(error.message);
  });
}

let told = "", keptText = "";

function report({ right, tasks, answered, complete }) {
  const now = `${right}/${answered}`;
  if (answered === 0 || told === now) return;
  told = now;
  const step = async () => course.report(await scoreOf(right, tasks, needed()), complete);
  send("report", step, complete ? say("All tasks are answered, and the course has your result.") : say("The course has your result so far."));
}

function keep(record) {
  const text = compact(record);
  if (text === keptText) return;
  keptText = text;
  send("keep", () => course.keep(text));
}

let tried = false;

// Whoever presses again after what is wrong has been said leaves all the same.
async function leave() {
  const button = byId("course-leave");
  button.disabled = true;
  for (const retry of again.values()) retry();
  await last;
  if (again.size > 0 && !tried) {
    tried = true;
    button.disabled = false;
    return;
  }
  try {
    const refused = await course.leave(false);
    connected = false;
    line(refused ? say("{problem} You can close this window.", { problem: refused.message }) : say("Done. You can close this window."));
    document.querySelector("main").inert = true;
  } catch (error) {
    line(error.message);
    button.disabled = false;
  }
}

// The page goes: what is not said now is never said.
function going() {
  connected = false;
  try {
    course.leave(true)?.catch?.(() => {});
  } catch {
    // nobody is there to read it
  }
}

try {
  const text = await course.open();
  connected = true;
  begin(expand(text));
  line(say("The course keeps your answers and gets your result."));
} catch (error) {
  line(error.message);
}
document.addEventListener("exercise", ({ detail }) => report(detail));
document.addEventListener("kept", ({ detail }) => keep(detail));
byId("course-leave").addEventListener("click", leave);
byId("course-leave").hidden = !connected;
addEventListener("pagehide", going);
addEventListener("pageshow", ({ persisted }) => persisted && location.reload()); // it has taken leave of the course
await open();
