// Puts a job into the day that is kept in this browser, without opening its page. The core joins the two forms.
import { go } from "./address.js";
import { Core } from "./core.js";
import { changed, kept, told } from "./day-change.js";
import { notify } from "./notices.js";
import { store } from "./state.js";
import { say } from "./words.js";

let core;

/** Adds rows, as text of a form, to the day. */
export async function putIntoDay(rows) {
  try {
    core ??= new Core("day.wasm");
    let before, after;
    do { // until no other page has changed the day meanwhile
      before = store.get(kept);
      after = await changed(core, before, { day_change: "add", added: rows });
      if (after.wrong) return notify(after.wrong);
    } while (store.get(kept) !== before);
    if (!keep(after.form)) return notify(say("This browser keeps nothing, so that the day cannot take this job. Open the day and type it there."));
    notify(after.changed, { [say("See the day")]: () => go("day.html"), [say("Undo")]: () => undo(before, after.form), [say("Close")]: undefined });
  } catch (error) {
    notify(error.message);
  }
}

function undo(before, after) {
  if (store.get(kept) === after) keep(before);
  else notify(say("The day has changed since. Take the job out there."));
}

const keep = (form) => store.set(kept, form) && store.set(told, String(Date.now()));
