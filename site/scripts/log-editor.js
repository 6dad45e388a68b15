// The page of one entry: saves it as a new one or over the one that it was opened from, and hands on the transfer
// efficiency that it gives.
import { Conflict, get } from "./db.js";
import { byId, el } from "./dom.js";
import { forget, noteForm, remember, shownBefore } from "./shelf-shown.js";
import { button } from "./shelf-ask.js";
import { check, handed, keep, takeOut, usual } from "./log-store.js";
import { offerTransferTo } from "./log-transfer.js";
import { notify } from "./notices.js";
import { answered, parse, write } from "./state.js";
import { say } from "./words.js";

const kind = "mix-record";

/** linked says that the form came by a link, so that it is no entry's; latest is the page's answer, if there is one. */
export function editEntries(main, linked, latest) {
  const bar = el("div", { class: "log-save" });
  byId("card").querySelector("h2").after(bar);
  let form, entry, report, saving = false;
  const fill = (values, says) => {
    const all = new Map([...(form?.keys() ?? [])].filter((key) => key !== "units" && !key.startsWith("units.")).map((key) => [key, ""]));
    for (const [key, text] of values) all.set(key, text);
    main.dispatchEvent(new CustomEvent("fill", { detail: { values: all, says } }));
  };
  const show = () => {
    const save = button(entry ? say("Save the change") : say("Log this mix"), () => saveIt(entry), "action");
    const again = entry && button(say("Log it as another mix"), () => saveIt(undefined));
    const none = entry && button(say("Start a new entry"), async () => { set(undefined); fill(await usual(), say("A new entry, with today’s day and time.")); });
    bar.replaceChildren(...[save, again, none, el("a", { class: "plain", href: "log.html" }, say("See the log"))].filter(Boolean));
  };
  const set = (next) => {
    const other = entry !== next;
    entry = next;
    if (next) remember(kind, next);
    else forget(kind);
    if (other) show(); // a button is not taken from under a finger for one just like it
  };
  async function saveIt(over, rev = over?.rev) {
    if (saving) return; // two quick taps are one entry
    saving = true;
    try {
      const checked = await check(form);
      if (checked.wrong) return notify(say("Not logged yet: put right what the form says first."));
      const stored = await keep(checked.form, over && { ...over, rev });
      if (!stored) return;
      set(stored);
      notify(over ? say("Saved in the log.") : say("Logged."), { ...(over ? {} : { [say("Undo")]: async () => (await takeOut(stored, say("Taken out of the log."))) && set(undefined) }), [say("Close")]: undefined });
    } catch (error) {
      if (error instanceof Conflict) return conflict(over).catch((e) => notify(e.message));
      notify(error.message);
    } finally {
      saving = false;
    }
  }
  // Another tab was quicker.
  async function conflict(over) {
    const theirs = await get("mix", over.id), mine = new Map(form);
    notify(say("This entry has been changed in another tab since you opened it. Yours is not saved yet."), {
      [say("Save mine over it")]: () => saveIt(theirs),
      [say("Show the other")]: () => { set(theirs); fill(parse(theirs.form), say("The entry as the other tab has left it.")); },
      [say("Log mine as another mix")]: () => { form = mine; saveIt(undefined); },
    });
  }
  async function start() {
    const text = handed(), before = linked ? undefined : shownBefore(kind);
    if (text.startsWith("id=")) {
      const found = await get("mix", text.slice(3));
      set(found);
      if (found) fill(parse(found.form), say("From the log. Save the change when you are done."));
      else notify(say("That entry is no longer in the log."));
    } else if (text) {
      set(undefined);
      fill(parse(text), say("Not logged yet. Change what you like, then log it."));
    } else {
      const found = before && (await get("mix", before.id));
      set(found ? { ...found, rev: before.rev } : undefined);
      if (!found && write(form) === "") fill(await usual(), say("A new entry, with today’s day and time."));
    }
  }
  let begun = false;
  const take = (detail) => {
    form = detail.form;
    report = detail.report;
    if (!begun) show(); // not before: there would be no form to log
    offerTransferTo(bar, report);
    noteForm(kind, form);
    if (!begun) start().catch((error) => notify(error.message));
    else if (entry && !answered(form)) set(undefined); // emptied, so it is the entry no longer
    begun = true;
  };
  if (latest) take(latest);
  main.addEventListener("answer", ({ detail }) => take(detail));
  addEventListener("hashchange", () => set(undefined)); // a pasted link is no entry of the log
}
