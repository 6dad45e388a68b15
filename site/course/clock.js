// The device's clock in the forms that courses take.

const second = 1000;
const two = (n) => String(n).padStart(2, "0");

let last = 0;

/** This moment in UTC (ISO 8601), never the same twice: statements are put in order by it. */
export function stamp() {
  last = Math.max(Date.now(), last + 1);
  return new Date(last).toISOString();
}

/** A length of time as a SCORM 1.2 timespan, HHHH:MM:SS. */
export function timespan(ms) {
  const s = Math.floor(ms / second);
  return `${String(Math.floor(s / 3600)).padStart(4, "0")}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}`;
}

/** A length of time as an ISO 8601 duration, to the hundredth. */
export function duration(ms) {
  const hundredths = Math.floor(Math.max(0, ms) / 10);
  return `PT${Math.floor(hundredths / 100)}.${two(hundredths % 100)}S`;
}

/** A clock that nobody can set, in ms. */
export const steady = () => performance.now();
