// Looks after the timers on whichever page is open: looks at the clock every second and whenever the page is seen again,
// announces marks in one tab only, and minds a clock that is set while it looks.
import { clockWatch, countdown, last } from "./clock.js";
import { notify } from "./notices.js";
import { say } from "./words.js";
import * as sound from "./timer-sound.js";
import { alter, claim, shifted, stage, timers, watch } from "./timer-store.js";
import { hold } from "./timer-awake.js";
import { nextMark, stageSays } from "./timer-words.js";

const patience = 1500; // ms that a tab which cannot be seen or heard leaves to one that can
const due = new Map(); // since when this tab has known of what is to be told, in ms of the steady clock

let list = [];
let onChange = () => {};
let speak = () => {};
let first = false; // whether this tab answers for the clock
let seen = false; // whether the page has been visible since the last look
const moved = clockWatch();

/** Begins. changed gets the timers whenever something may have changed, a second apart at most; say is for announcing. */
export async function look(changed, announce) {
  onChange = changed;
  speak = announce;
  watch((kind) => kind === "timer" && reload());
  for (const event of ["visibilitychange", "pageshow", "focus"]) (event === "visibilitychange" ? document : window).addEventListener(event, tick);
  document.addEventListener("visibilitychange", () => { seen = false; answerForClock(); });
  for (const event of ["pointerdown", "keydown"]) addEventListener(event, () => { sound.hush(); if (list.length > 0) sound.wake(); }, { capture: true });
  answerForClock();
  await reload();
  run();
}

async function reload() {
  list = await timers();
  hold(list.some((t) => nextMark(t, Date.now())));
  onChange(list);
}

function run() {
  tick();
  setTimeout(run, 1000 - (Date.now() % 1000) + 5);
}

function tick() {
  const jump = moved();
  if (jump < 0 && first) setBack(-jump);
  if (jump > 0 && first && seen) ahead(jump);
  seen = !document.hidden;
  for (const t of list) for (const m of t.marks) if (stage(m) > m.told) tell(t, m);
  onChange(list);
}

// The write decides which tab tells: it is refused to all but the first.
async function tell(t, m) {
  const at = stage(m), late = Date.now() - m.at, key = [t.id, m.at, at].join();
  if (!due.has(key)) due.set(key, performance.now());
  if ((document.hidden || !sound.ready()) && performance.now() - due.get(key) < patience) return;
  m.told = at; // not again while the write is under way
  const marks = t.marks.map((x) => (x.is === m.is ? { ...x, told: at } : { ...x }));
  if (!(await claim({ ...t, marks }))) return reload();
  const long = at === 3 && late > last; // nobody needs an alarm for what is long past
  const text = stageSays(t, m, at, long ? countdown(late) : undefined);
  speak(text);
  if (long) notify(text);
  else if (at === 3) sound.ringing();
  else if (at === 2) sound.approaching();
  if (at === 3) sound.notice(text);
}

// The clock was set back. Nobody knows which of the two is right, so a pot life takes the longer time and all else the
// shorter: those deadlines stand, and so move away with the clock.
async function setBack(by) {
  for (const t of list) if (t.kind === "pot") await alter(t.id, (now) => shifted(now, -by));
  if (list.length === 0) return;
  notify(say("This device’s clock was set back by {time}. Pot life counts on as if it had not been; flash-off, recoat and bake wait that much longer. Check them against another clock.", { time: countdown(by) }));
  reload();
}

// The clock went ahead of the page's own: the device slept, or the clock was set. Only the person knows.
function ahead(by) {
  if (!list.some((t) => nextMark(t, Date.now() - by))) return;
  const set = async () => {
    for (const t of list) if (t.kind !== "pot") await alter(t.id, (now) => shifted(now, by));
    reload();
  };
  notify(say("The clock went ahead by {time}. If the device slept, all is right. If the clock was set, flash-off, recoat and bake have to wait that much longer.", { time: countdown(by) }),
    { [say("The clock was set")]: set, [say("The device slept")]: undefined });
}

// The tab that is seen answers for the clock, so that a change counts once.
function answerForClock() {
  if (!navigator.locks) {
    first = !document.hidden;
    return;
  }
  if (document.hidden) return;
  navigator.locks.request("spraywright:clock", { steal: true }, () => {
    first = true;
    return new Promise(() => {}); // held until another tab takes it over
  }).catch(() => { first = false; });
}
