// What a timer says: its kind, its marks, and how things stand.
import { countdown, soon } from "./clock.js";
import { say } from "./words.js";

export const kindName = (kind) => ({
  flash: say("Flash-off"), pot: say("Pot life"), recoat: say("Recoat window"), bake: say("Bake"),
})[kind];

/** What a person calls a timer: its cup or part first, which tells two of one kind apart. */
export const called = (t) => (t.name ? `${t.name} · ${kindName(t.kind)}` : kindName(t.kind));

/** Names the button of a timer by its kind, where several stand beside one another. */
export function byKind(button, { kind, of }) {
  const says = say("Timer: {what}", { what: kindName(kind) });
  button.textContent = says;
  button.setAttribute("aria-label", `${says}, ${of}`);
  return button;
}

export function markName(kind, is) {
  if (is === "soonest") return say("Not before");
  return { flash: say("Flashed off by"), pot: say("Use up by"), recoat: say("At the latest"), bake: say("Bake until") }[kind];
}

/** What is left of a mark, or how long ago it was. */
export const left = (mark, now) => (mark.at > now ? countdown(mark.at - now) : say("{time} ago", { time: countdown(now - mark.at) }));

/** The mark that comes next, or undefined. */
export const nextMark = (t, now) => t.marks.find((m) => m.at > now);

/** How things stand: a level and what to do. */
export function standing(t, now) {
  const passed = (is) => t.marks.some((m) => m.is === is && m.at <= now);
  const over = !nextMark(t, now);
  return { flash, pot, recoat, bake }[t.kind](t, now, over, passed);
}

function flash(t, now, over, passed) {
  if (over) return { level: "go", text: say("Go on once the film passes the test that the data sheet names.") };
  if (passed("soonest")) return { level: "wait", text: say("Touch-test a masked edge as the data sheet says. If in doubt, wait for the longest.") };
  return { level: "wait", text: say("No coat yet.") };
}

function pot(t, now, over) {
  if (over) return { level: "stop", text: say("Past its pot life: do not spray it. Dispose of it as your local code says, and clean the gun now.") };
  if (nextMark(t, now).at - now <= soon) return { level: "wait", text: say("Finish the coat at hand and mix afresh for the next.") };
  return { level: "go", text: say("Inside its pot life. If it thickens sooner, do not spray it.") };
}

function recoat(t, now, over, passed) {
  if (passed("latest")) return { level: "stop", text: say("The window is shut: sand before you recoat, or as the data sheet says.") };
  if (over || passed("soonest") || t.marks[0].is === "latest") return { level: "go", text: say("Recoat once it is as dry as the data sheet asks.") };
  return { level: "wait", text: say("No coat yet.") };
}

function bake(t, now, over, passed) {
  if (over) return { level: "go", text: say("Test the cure as the data sheet says.") };
  if (passed("soonest")) return { level: "wait", text: say("It may be through. Bake on to be sure.") };
  return { level: "wait", text: say("Keep baking.") };
}

/** What is said and shown when a stage is reached: 1 for five minutes, 2 for one, 3 for now. */
export function stageSays(t, mark, stage, late) {
  const what = called(t), which = markName(t.kind, mark.is);
  if (stage === 1) return say("{what}: five minutes to “{which}”.", { what, which });
  if (stage === 2) return say("{what}: one minute to “{which}”.", { what, which });
  const doing = standing(t, mark.at).text;
  if (late) return say("{what}: “{which}” was {time} ago. {doing}", { what, which, time: late, doing });
  return say("{what}: “{which}” is now. {doing}", { what, which, doing });
}
