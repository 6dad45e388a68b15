// Changes to the day that are made in the plan: a step held or let go, done, all planned again from now, jobs added. The
// core writes the new form; the page fills it in, tells what changed and can take it back.
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

/** Where the page of the day keeps its form, and what another page that changes it says so with. */
export const kept = "form:day", told = "day-put";

/** Asks a core of the day for a changed form: { form, changed } as text, or { wrong } in words. */
export async function changed(core, dayForm, change) {
  const asked = new Map([["day_form", dayForm], ...Object.entries(change)].filter(([, text]) => text));
  const report = await core.report("day-change", write(asked));
  const told = (key) => report.figures.find((f) => f.key === key)?.text;
  return told("form") === undefined ? { wrong: report.problems.map(sentence).join(" ") } : { form: told("form"), changed: told("changed") };
}

export class Changes {
  #main;
  #search;

  constructor(main, search) {
    this.#main = main;
    this.#search = search;
  }

  /** Makes a change and fills the form in. Returns what is wrong with it, in words, or nothing. */
  async make(change) {
    if (!this.#search.core) return "";
    const before = this.#search.form, looked = this.#search.looking;
    this.#search.keep(true);
    try {
      await this.#search.stop(); // so that it is answered at once
      const after = await changed(this.#search.core, before, change);
      if (after.wrong) {
        if (looked) this.#search.further();
        return after.wrong;
      }
      this.#fill(parse(before), parse(after.form), after.changed);
    } catch (error) {
      notify(error.message);
    } finally {
      this.#search.keep(false);
    }
    return "";
  }

  /** A change whose trouble is told at the top of the page. */
  async tell(change) {
    const wrong = await this.make(change);
    if (wrong) notify(wrong);
  }

  hold(of, where) {
    const along = where.along === undefined ? {} : { along: String(Math.round(10 * where.along) / 10) };
    return this.tell({ day_change: "hold", step_of: of, ...along });
  }

  /** Takes over what another tab has put into the day that is kept. */
  follow() {
    addEventListener("storage", ({ key }) => {
      if (key === `spraywright:${told}`) this.#fill(parse(this.#search.form), parse(store.get(kept)), say("Another page has changed this day."));
    });
  }

  #fill(before, after, says) {
    // Only what differs: what has been typed meanwhile stays.
    const keys = [...before.keys(), ...after.keys()].filter((key) => before.get(key) !== after.get(key));
    const values = new Map(keys.map((key) => [key, after.get(key) ?? ""]));
    this.#main.dispatchEvent(new CustomEvent("fill", { detail: { values, says, own: true } }));
  }
}
