// Takes the place of scripts/address.js in an embedded page: its address holds options, whose names begin with
// "frame.", and then the form, "#frame.of=wet-film&frame.lock=coats&coats=2". Nothing is ever written back to it.

export const pageKey = "page";

const mark = "frame.";
const pairsOf = (text) => [...new URLSearchParams(text)].filter(([key, value], i, all) => key && value && all.findIndex(([k]) => k === key) === i);
const first = pairsOf(location.hash.slice(1)); // a host cannot lift a lock by changing the address later
const option = (name) => first.find(([key]) => key === mark + name)?.[1] ?? "";
const keys = (name) => new Set(option(name).split(",").map((key) => key.trim()).filter(Boolean));

/** What the link asks of the frame. */
export const options = {
  of: option("of"),
  lock: keys("lock"),
  hide: keys("hide"),
  theme: option("theme"),
  title: option("title").slice(0, 200),
  answer: option("answer"),
  working: option("working"),
};

/** Whether a key is among those of a list: itself, its unit, its column "part.length", or its whole table. */
export function covers(list, key) {
  const [table, row, column] = key.replace(/\.unit$/, "").split(".");
  if (list.has(table)) return true;
  return row !== undefined && list.has(`${table}.${column ?? row}`);
}

/** The form of the link that the frame was opened with. */
export const firstForm = () => new Map(first.filter(([key]) => !key.startsWith(mark)));

/** The text of the form in the address. What is locked stays as the frame was opened with. */
export function formText() {
  const now = pairsOf(location.hash.slice(1)).filter(([key]) => !key.startsWith(mark) && !covers(options.lock, key));
  const locked = [...firstForm()].filter(([key]) => covers(options.lock, key));
  return new URLSearchParams([...now, ...locked]).toString();
}

export const withForm = () => location.href;
export const query = () => new URLSearchParams();
export const dropQuery = () => {};
export const go = () => {};
export const shareable = true;
export const turn = () => false;
