// The page of the booth day: what it has beside the form and the answer of any calculator.
import { Again } from "./day-again.js";
import { Calls } from "./day-calls.js";
import { Changes } from "./day-change.js";
import { closePlaces, easeTyping } from "./day-form.js";
import { Nows } from "./day-now.js";
import { Search } from "./day-search.js";
import { Sheet } from "./day-sheet.js";
import { showSearch } from "./day-state.js";
import { Timelines } from "./day-timeline.js";
import { warm } from "./day-warm.js";
import { byId } from "./dom.js";

export function open(main) {
  closePlaces(main);
  const search = new Search(main, (state) => showSearch(state));
  byId("day-stop").addEventListener("click", () => search.stop());
  byId("day-further").addEventListener("click", () => search.further());
  const changes = new Changes(main, search);
  const sheet = new Sheet(main, search, changes);
  const timelines = new Timelines(main, { open: (of, says) => sheet.open(of, says), drop: (of, along) => changes.hold(of, { along }), keep: (is) => search.keep(is) });
  const calls = new Calls(main, changes, (of) => sheet.open(of));
  new Nows([timelines, calls]);
  new Again(search, changes);
  easeTyping(main, changes);
  main.addEventListener("answer", ({ detail }) => warmLater(detail), { once: true });
  changes.follow();
}

const idle = 300; // ms after the first answer, when the page has been drawn

// A day that is planned already has warmed the core.
function warmLater({ report, core }) {
  if (report.lists.length === 0) setTimeout(() => warm(core), idle);
}
