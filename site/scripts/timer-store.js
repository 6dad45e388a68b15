// The timers as they are kept. A deadline is a moment of the clock (epoch ms), so that it stands through reloads, sleep
// and closing; what is left is worked out anew each time it is looked at.
//
// A timer is { id, kind, name, begun, marks: [{ is, at, told }], set, sheet, stays, since }. told is how far a mark has
// been announced (0 to 3), set the minutes that the person has moved it by. A pot life keeps, as texts, the data sheet it
// follows the temperature by, where it has stood, and since when it stands where it is now.
import { after, last, now, soon } from "./clock.js";
import * as db from "./db.js";
import { notify } from "./notices.js";
import { store } from "./state.js";
import { say } from "./words.js";

const kind = "timer";

/** Every timer, what comes next first. */
export async function timers() {
  const all = await db.all(kind);
  const at = (t) => (t.marks.find((m) => m.at > Date.now()) ?? t.marks.at(-1)).at;
  return all.sort((a, b) => at(a) - at(b));
}

/** How far on a mark is: 1 within five minutes, 2 within one, 3 passed. */
export const stage = (mark, at = Date.now()) => (mark.at <= at ? 3 : mark.at - at <= last ? 2 : mark.at - at <= soon ? 1 : 0);

// What is near already when a mark is set is not announced, but for its passing.
const mark = (is, at) => ({ is, at, told: Math.min(stage({ at }), 2) });

/** A timer as an answer's report gives it, begun at this moment. form holds what was typed. */
export function made(timer, form = new Map()) {
  const at = now(), begun = after(at, -timer.ago);
  const t = { id: db.freshId(), kind: timer.kind, name: timer.of, begun, set: 0, marks: timer.marks.map((m) => mark(m.is, after(at, m.minutes))) };
  if (t.kind !== "pot") return t;
  const stays = staysIn(form);
  return { ...t, sheet: sheetIn(form, timer.row), stays, since: stays.length > 0 ? at : begun };
}

const sheetKeys = ["pot_life", "pot_life_at", "pot_life_second", "pot_life_second_at"];

// The texts of some keys with their units, which a row may have from its column.
function texts(form, keys, row = "") {
  const table = row.split(".")[0];
  const found = {};
  for (const key of keys) {
    if (!form.has(row + key)) continue;
    found[key] = form.get(row + key);
    const unit = form.get(`${row}${key}.unit`) ?? (row && form.get(`${table}.${key}.unit`));
    if (unit) found[key + ".unit"] = unit;
  }
  return found;
}

const sheetIn = (form, row) => ({ ...texts(form, sheetKeys, row), ...texts(form, ["air"]) });

function staysIn(form) {
  const rows = new Set([...form.keys()].map((key) => /^stay\.\d+\./.exec(key)?.[0]).filter(Boolean));
  return [...rows].map((row) => texts(form, ["stood_for", "stood_at"], row));
}

/** Keeps a timer, new or changed; tells the person when it could not be kept. Returns it as kept, or undefined. */
export async function keep(t) {
  try {
    const [kept] = await db.put(kind, t);
    mind();
    return kept;
  } catch (error) {
    if (!(error instanceof db.Conflict)) notify(db.told(error, say("This timer could not be kept: write its time down.")));
    return undefined;
  }
}

/** Writes what has been announced. False when another tab was first; a write that fails otherwise must not keep it quiet. */
export async function claim(t) {
  try {
    await db.put(kind, t);
    return true;
  } catch (error) {
    return !(error instanceof db.Conflict);
  }
}

/** Changes a timer as it now stands. change gives the new one; another tab's write in between makes it run again. */
export async function alter(id, change) {
  for (let tries = 0; tries < 5; tries++) {
    const t = await db.get(kind, id);
    if (!t) return undefined;
    try {
      const [kept] = await db.put(kind, change(t));
      return kept;
    } catch (error) {
      if (!(error instanceof db.Conflict)) return void notify(db.told(error, say("This timer could not be kept: write its time down.")));
    }
  }
  return undefined;
}

/** Takes a timer away. */
export async function drop(t) {
  await db.remove(kind, t.id);
  mind();
}

/** The same timer with every mark moved by ms. */
export const moved = (t, ms) => ({ ...t, marks: t.marks.map((m) => mark(m.is, m.at + ms)) });

/** The same timer as if it had begun, and stood where it is, ms later or earlier. */
export const shifted = (t, ms) => ({ ...moved(t, ms), begun: t.begun + ms, ...(t.since === undefined ? {} : { since: t.since + ms }) });

/** The same timer with its last mark so many minutes from now. */
export const ending = (t, minutes) => ({ ...t, marks: t.marks.map((m, i) => (i === t.marks.length - 1 ? mark(m.is, after(now(), minutes)) : m)) });

// Other pages look after timers only where they know that there are any.
async function mind() {
  const any = (await db.all(kind)).length > 0;
  if (Boolean(store.get("timers")) !== any) store.set("timers", any ? "1" : "");
}

export const { watch, kept } = db;
