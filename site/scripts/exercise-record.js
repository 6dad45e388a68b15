// What a learner has done of a set: told to a course that listens, and put on the slip.
import { keep, kept } from "./exercise-keep.js";

/** The record of a set: { seed, begun, name, at, typed, unit, slots: [{ draw, tries: [] }] }, one slot a task. begun is the
 * moment at which it was first kept, by the device's clock, and 0 before. What cannot be one is left out. */
export function readRecord(id, tasks) {
  const record = { seed: "", begun: 0, name: "", at: 0, ...kept(id) }, slots = Array.isArray(record.slots) ? record.slots : [];
  record.slots = Array.from({ length: tasks }, (_, i) => slotOf(slots[i]));
  for (const key of ["seed", "name"]) record[key] = String(record[key] ?? "");
  record.begun = Number(record.begun) || 0;
  record.at = Math.min(whole(record.at, 0), tasks - 1);
  return record;
}

const whole = (x, least) => Math.max(least, Math.trunc(Number(x)) || 0);
const judgements = ["right", "close", "off"];

const slotOf = (slot) => ({
  draw: whole(slot?.draw, 1),
  tries: (Array.isArray(slot?.tries) ? slot.tries : []).filter((t) => judgements.includes(t?.judged) && Array.isArray(t.given ?? [])),
});

/** What a record has of an answer that was judged: the answer, and for the slip what was asked. title is the calculator's. */
export const tried = (task, title, { when, draw, answer, unit }) => ({
  when, draw, answer, unit, judged: task.judged, yours: task.yours, mistake: task.mistake, right: [task.right, task.right_unit].filter(Boolean).join("\u202f"),
  title, label: task.label, given: task.given.map((g) => [g.label, g.text]),
});

/** Takes in what another tab has kept of the same set since: its answers beside ours, or all of it where it has begun
 * again. */
export function mergeRecord(id, record) {
  const other = readRecord(id, record.slots.length);
  if (other.begun < record.begun) return;
  const anew = other.begun > record.begun;
  record.slots.forEach((slot, i) => {
    const theirs = other.slots[i], tries = anew ? [] : slot.tries;
    const news = theirs.tries.filter((t) => !tries.some((own) => own.draw === t.draw));
    slot.tries = [...tries, ...news].sort((a, b) => (a.when ?? 0) - (b.when ?? 0));
    slot.draw = anew ? theirs.draw : Math.max(slot.draw, ...news.map((t) => t.draw));
  });
  if (anew) Object.assign(record, { seed: other.seed, begun: other.begun, at: 0, typed: "" });
}

/** Keeps it, with what other tabs have kept. Returns whether the browser does. */
export function keepRecord(id, record) {
  mergeRecord(id, record);
  record.begun ||= Date.now();
  return keep(id, record);
}

/** What counts for a task: the first answer given. Others are practice. */
export const counted = (slot) => slot.tries[0];

/** How many answers are right, close and off. */
export function score(record) {
  const found = { right: 0, close: 0, off: 0 };
  for (const slot of record.slots) if (counted(slot)) found[counted(slot).judged]++;
  const answered = found.right + found.close + found.off;
  return { tasks: record.slots.length, answered, ...found, complete: answered === record.slots.length };
}

/** Tells whoever listens on the document how far the learner is: an "exercise" event whose detail is
 * { set, tasks, answered, right, close, off, complete }. It comes once as a set opens and after each answer that counts. */
export function tell(id, record) {
  document.dispatchEvent(new CustomEvent("exercise", { detail: { set: id, ...score(record) } }));
}
