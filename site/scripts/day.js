// The page of the booth day: what it has beside the form and the answer of any calculator.
import { Calls } from "./day-calls.js";
import { Changes } from "./day-change.js";
import { closePlaces, easeTyping } from "./day-form.js";
import { Nows } from "./day-now.js";
import { Search } from "./day-search.js";
import { Sheet } from "./day-sheet.js";
import { showSearch } from "./day-state.js";
import { Timelines } from "./day-timeline.js";
import { byId } from "./dom.js";

export function open(main) {
  closePlaces(main);
  const search = new Search(main, (state) => showSearch(state));
  byId("day-stop").addEventListener("click", () => search.stop());
  byId("day-further").addEventListener("click", () => search.further());
  const changes = new Changes(main, search);
  const sheet = new Sheet(main, search, changes);
  const timelines = new Timelines(main, { open: (of, says) => sheet.open(of, says), drop: (of, along) => changes.hold(of, { along }) });
  const calls = new Calls(main, changes, (of) => sheet.open(of));
  new Nows(main, changes, [timelines, calls]);
  easeTyping(main, changes);
  changes.follow();
}
