// The line that says how the search for a better plan stands.
import { byId, fill } from "./dom.js";
import { say } from "./words.js";

const says = {
  looks: (n) => say("Looking for a better plan: {n} steps tried", { n }),
  repeats: (n, goal) => say("Making the plan of this form again: {n} of {goal} steps tried", { n, goal }),
  proven: () => say("Looking further would gain nothing."),
  reached: (n) => say("The plan after {n} steps. Looking further may find a better one.", { n }),
  stopped: (n) => say("The best plan of {n} steps tried.", { n }),
  hidden: (n) => say("The best plan of {n} steps tried.", { n }),
  tired: (n) => say("No better plan for a while, after {n} steps tried.", { n }),
  failed: () => say("The search has stopped: the core did not answer."),
};

/** Shows a state of the search. */
export function showSearch({ state, tried, goal }) {
  const root = byId("day-search");
  root.hidden = state === "none" || state === "waits";
  root.nextElementSibling.hidden = root.hidden;
  if (root.hidden) return;
  const busy = state === "looks" || state === "repeats";
  root.classList.toggle("busy", busy);
  fill(root, { says: says[state](tried, goal) });
  byId("day-stop").hidden = !busy;
  byId("day-further").hidden = busy || state === "proven";
}
