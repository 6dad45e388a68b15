// What the frame and the page around it say to each other. DEVELOPERS.md has the messages. They go to whoever frames
// this page, because it cannot know who that is: they hold only what its own link and the learner have put in, and what
// follows from that.
import { covers, options } from "./address.js";
import { write } from "../scripts/state.js";

const version = 1;
const longest = 100_000; // characters of a form
const framed = parent !== self;

/** Tells the page around. */
export function tell(kind, more = {}) {
  if (framed) parent.postMessage({ spraywright: version, kind, of: options.of, ...more }, "*");
}

/** Tells the height of the page, now and whenever it changes. */
export function tellHeight() {
  let last;
  const measure = () => {
    const height = Math.ceil(document.body.getBoundingClientRect().height);
    if (height !== last) tell("height", { height: (last = height) });
  };
  new ResizeObserver(measure).observe(document.body);
  return () => {
    last = undefined;
    measure();
  };
}

const figure = ({ key, label, text, typed, value, unit_id, unit }) => ({ key, label, text, ...(unit_id && { typed, value, unit_id, unit }) });

/** What is told of an answer. */
export const answerOf = ({ form, report }) => ({
  form: write(form),
  figures: report.figures.map(figure),
  lists: report.lists.map((l) => ({ key: l.key, label: l.label, rows: l.rows.map((row) => row.map(figure)) })),
  verdict: report.verdict.map(({ level, why, do: what }) => ({ level, why, do: what })),
  problems: report.problems.map(({ field, code, message }) => ({ field, code, message })),
});

/** Follows what the page around asks for; act has a function for each kind. Anything else is passed over. */
export function heed(act) {
  addEventListener("message", ({ source, data }) => {
    if (!framed || source !== parent || typeof data !== "object" || data?.spraywright !== version) return;
    if (data.kind === "fill" && typeof data.form === "string" && data.form.length <= longest) act.fill(unlocked(data.form));
    else if (data.kind === "theme" && typeof data.theme === "string") act.theme(data.theme);
    else if (data.kind === "ask") act.ask();
  });
}

// The values of a form, blank to clear one, without those that are locked.
const unlocked = (text) => new Map([...new URLSearchParams(text)].filter(([key]) => key && !covers(options.lock, key)));
