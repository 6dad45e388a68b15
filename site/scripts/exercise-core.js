// Asks the cores for exercises: the tasks in a link, and a task with the judgement of an answer. See calc/exercise.
import { Core } from "./core.js";
import { parse, write } from "./state.js";

const cores = new Map();

function ask(file, id, form) {
  if (!cores.has(file)) cores.set(file, new Core(file));
  return cores.get(file).report(id, write(form));
}

/** The tasks in a link: { id, seed, tasks: [{ of, row }], problems }. */
export const readSet = (link) => ask("shelf.wasm", "exercise-set", link);

/** A task by its settings, from the calculator of a core. */
export const task = (file, of, settings) => ask(file, "exercise/" + of, settings);

const shared = ["level", "units", "right", "close"];

/** How right answers to some of the tasks stand as a score, in the terms of a course: see ScoreJSON in calc/exercise. */
export const scoreOf = (right, tasks, needed) => ask("shelf.wasm", "exercise-score", new Map([["right", String(right)], ["tasks", String(tasks)], ...needed]));

/** The settings that a link holds for one of its exercises, "q.2.", with what the numbers are drawn from. */
export function settingsOf(link, row, seed, draw) {
  const settings = new Map(shared.filter((key) => link.has(key)).map((key) => [key, link.get(key)]));
  for (const [key, text] of link) {
    if (key.startsWith(row) && key !== row + "of") settings.set(key.slice(row.length), text);
  }
  settings.set("seed", seed);
  if (draw > 1) settings.set("draw", String(draw));
  return settings;
}

/** The form behind a task, for its calculator's page. */
export function formOf(task) {
  const form = new Map();
  for (const { field, typed, unit } of task.given) {
    form.set(field, typed);
    if (unit) form.set(field + ".unit", unit);
  }
  return write(form);
}

/** A copy of a link as a map of texts. */
export const readLink = (text) => parse(text);
