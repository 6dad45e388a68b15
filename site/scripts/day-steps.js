// The steps of a plan as its pictures and lists tell of them.
import { readTime } from "./clock.js";

const own = /^(prep|spray|bake)( |$)/; // what can be held, and done; the others go with one of these

/** The steps that the bars of a picture stand for, in the order of its shapes: { shape, of, look, main, done, from, until,
 * says, start, end }, the last two in minutes. The list of the same name tells of the same in the same order. */
export function stepsOf(report, key) {
  const picture = report.pictures.find((p) => p.key === key), list = report.lists.find((l) => l.key === key);
  if (!picture || !list) return [];
  const column = (name) => list.columns.findIndex((c) => c.key === name);
  const [from, until, says] = ["from", "until", "step"].map(column);
  const rows = list.rows.filter((row) => row[says].of && row[from].text !== row[until].text);
  const bars = picture.shapes.filter((s) => s.kind === "bar" && s.of);
  return bars.map((shape, i) => {
    const row = rows[i];
    if (rows.length !== bars.length || row[says].of !== shape.of) throw new Error(`the list and the picture ${key} differ`);
    return {
      shape, of: shape.of, look: shape.look, main: own.test(shape.look), done: shape.look.endsWith(" done"),
      from: row[from].text, until: row[until].text, says: row[says].text, start: readTime(row[from].text), end: readTime(row[until].text),
    };
  });
}

const aDay = 24 * 60, early = 6 * 60; // minutes; the second is the core's, too

/** A time of day in minutes, as a plan counts it: past midnight it is the next day's, where the plan goes on so long. */
export function inPlan(minutes, steps) {
  const first = Math.min(...steps.map((s) => s.start)), last = Math.max(...steps.map((s) => s.end));
  return minutes < first - early && minutes + aDay <= last + early ? minutes + aDay : minutes;
}

/** The step that a reference names, with what the call sheet says of it: note, latest, who, and timers with their places. */
export function stepNamed(report, of) {
  const step = stepsOf(report, "by_place").find((s) => s.of === of && s.main) ?? stepsOf(report, "by_job").find((s) => s.of === of && s.main);
  if (!step) return undefined;
  const call = report.lists.find((l) => l.key === "call"), column = (name) => call.columns.findIndex((c) => c.key === name);
  const own = call.rows.find((row) => row[column("step")].of === of && row[column("step")].text === step.says);
  const text = (name) => (own && own[column(name)].text !== "—" ? own[column(name)].text : "");
  const timers = call.rows.flatMap((row, i) => (row[column("step")].of === of ? row.map((f, k) => ({ f, place: `call.${i}.${k}` })) : [])).filter(({ f }) => f.timer);
  const pinned = report.pictures.some((p) => p.shapes.some((s) => s.kind === "dot" && s.look === "pin" && s.of === of));
  return { ...step, note: text("note"), latest: text("no_later"), who: text("who"), timers, pinned };
}

/** Where times lie in a picture whose time runs along x or y: how long a minute is, and the place of a time. */
export function scaleOf(steps, along) {
  const size = along === "y" ? "h" : "w";
  const longest = steps.reduce((a, b) => (b.end - b.start > a.end - a.start ? b : a));
  const per = longest.shape[size] / (longest.end - longest.start), at = longest.shape[along];
  return { per, place: (minutes) => at + per * (minutes - longest.start) };
}
