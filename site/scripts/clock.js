// The device's clock: times of day and countdowns. The core has no clock, so that these are the only figures which the
// page words by itself. They have no decimals and are written alike in every language.

const second = 1000, minute = 60 * second, day = 24 * 60 * minute;

/** This moment, to the second. */
export const now = () => Math.floor(Date.now() / second) * second;

/** The moment so many minutes after another, to the second. */
export const after = (moment, minutes) => moment + Math.round((minutes * minute) / second) * second;

/** The minutes from one moment to another, as text for the core: to the tenth, and never fewer than have gone by. */
export function minutes(from, to) {
  const tenths = Math.max(0, Math.ceil((10 * (to - from)) / minute));
  return `${Math.floor(tenths / 10)}.${tenths % 10}`;
}

/** How many minutes before a moment are told. */
export const soon = 5 * minute;
export const last = minute;

/** A length of time as 4:05 or 1:04:05, begun seconds counted whole where it runs out. */
export function countdown(ms) {
  const s = Math.abs(Math.ceil(ms / second));
  const h = Math.floor(s / 3600), m = Math.floor(s / 60) % 60;
  return (h > 0 ? `${h}:${two(m)}` : String(m)) + ":" + two(s % 60);
}

/** A moment as a time of day, 9:05; on another day, "9:05 +1 d", and after the clocks change with its offset. */
export function timeOfDay(ms, from = Date.now()) {
  const at = new Date(ms), here = new Date(from);
  const days = Math.round((midnight(at) - midnight(here)) / day);
  const offset = at.getTimezoneOffset();
  return `${at.getHours()}:${two(at.getMinutes())}` + (days === 0 ? "" : ` ${sign(days)}${Math.abs(days)} d`) +
    (offset === here.getTimezoneOffset() ? "" : ` UTC${sign(-offset)}${Math.floor(Math.abs(offset) / 60)}:${two(Math.abs(offset) % 60)}`);
}

/** A moment as minutes after midnight, and a time of day that the core wrote as the same. */
export const minuteOfDay = (ms = Date.now()) => 60 * new Date(ms).getHours() + new Date(ms).getMinutes();
export const readTime = (text) => {
  const [, h, m, d = 0] = /^(\d+):(\d\d)(?: \+(\d+) d)?$/.exec(text.trim()) ?? [];
  return 60 * (24 * Number(d) + Number(h)) + Number(m);
};

/** Minutes after midnight as a time of day, as the core takes and writes it. */
export function writeTime(minutes) {
  const m = ((Math.round(minutes) % (24 * 60)) + 24 * 60) % (24 * 60);
  return `${Math.floor(m / 60)}:${two(m % 60)}`;
}

/** Whether a text is a time of day that can be moved on by minutes. */
export const isTime = (text) => /^\d{1,2}:\d\d$/.test(text.trim());

/** Whether a moment is of the same day as another. */
export const sameDay = (ms, from = Date.now()) => midnight(new Date(ms)) === midnight(new Date(from));

const two = (n) => String(n).padStart(2, "0");
const sign = (n) => (n < 0 ? "−" : "+");
const midnight = (d) => Date.UTC(d.getFullYear(), d.getMonth(), d.getDate());

/** Compares the clock with one that nobody can set. Returns by how many ms it has been moved since the last call: less
 * than 0 when it was set back; more when it was set on, or when the device slept. Small steps count as none. */
export function clockWatch() {
  let wall = Date.now(), steady = performance.now();
  return () => {
    const moved = Date.now() - wall - (performance.now() - steady);
    wall = Date.now();
    steady = performance.now();
    return Math.abs(moved) > 2 * second ? Math.round(moved) : 0;
  };
}
