// Looks for a better plan, slice by slice, while the page shows the best so far. The plan hangs on the form and the
// number of steps tried alone, so that how the number was reached changes nothing.
import { parse, write } from "./state.js";

const slice = 120; // ms that one slice should take, so that a question of the person's never waits long
const touch = 700; // ms that a touch takes
const patience = 45000; // ms without a better plan, after which it rests by itself
const stride = 1000; // the core rounds up to whole strides
const least = 2000, most = 50000; // steps of a slice
const limit = 19_900_000; // steps from which on the core looks no further, whatever it may find
const plainCount = /^\d{1,7}$/;

/** The search. tell is called with its state whenever that changes: { state, tried, goal }; state is "looks", or
 * "repeats" while the plan of a link is made again, or why it rests: proven, reached, stopped, hidden, tired, failed, none. */
export class Search {
  #main;
  #tell;
  #core;
  #question; // the form that is looked for, in the page's own writing
  #form; // the same as it stands on the page, by key
  #asked; // the steps to try as the page's form has them, text
  #report; // the last one, shown or not
  #at; // how far the search is: { tried_now, tried_next } among its figures
  #is; // what tells the plan from others, in the core's words
  #goal; // the steps that the form asks for; Infinity for as many as there are
  #state = "waits";
  #looking; // settles when the search rests
  #halt = false;
  #run = 0; // counts searches: an answer to an older one is left alone
  #step = least;
  #shown; // what the plan said when it was last handed to the page
  #onPage; // the report that the page shows
  #hands = 0; // how many things hold the plan that is shown: a bar being moved, a sheet, a change being made
  #latest; // what the last one says, shown or not
  #touched = -Infinity; // when the page was last touched
  #found; // the steps after which it said so first: no more are needed to make it again
  #since; // when it last got better

  constructor(main, tell) {
    this.#main = main;
    this.#tell = tell;
    main.addEventListener("answer", ({ detail }) => this.#answered(detail));
    main.addEventListener("pointerdown", () => { this.#touched = performance.now(); }, { capture: true, passive: true });
    document.addEventListener("visibilitychange", () => !document.hidden && this.#state === "hidden" && this.#begin());
  }

  /** The form of the plan that is shown, with the steps tried for it, as text: a change is made to that plan, not to a
   * better one that has been found since. */
  get form() {
    return write(parse(this.#question ?? "").set("tried", String(figure(this.#onPage, "tried_now")?.value ?? 0)));
  }

  /** What that form says for a key. */
  formOf(key) {
    return this.#form.get(key) ?? "";
  }

  /** The report that is shown. */
  get report() {
    return this.#onPage;
  }

  /** Keeps the plan that is shown, while something is done with it, or lets better ones come again. */
  keep(is) {
    this.#hands += is ? 1 : -1;
    if (this.#hands === 0 && this.#state !== "none" && this.#state !== "waits") this.#hand();
  }

  get core() {
    return this.#core;
  }

  get tried() {
    return figure(this.#at, "tried_now")?.value ?? 0;
  }

  /** Stops, after the slice that is under way, so that what the core has found is what the page has. */
  async stop() {
    if (!this.looking) return;
    this.#halt = true;
    await this.#looking;
  }

  further() {
    this.#goal = Infinity;
    this.#begin();
  }

  get looking() {
    return this.#state === "looks" || this.#state === "repeats";
  }

  #answered({ question, form, report, core }) {
    this.#core = core;
    this.#form = form;
    this.#onPage = report;
    const asked = form.get("tried");
    if (question === this.#question && asked === this.#asked) {
      // The page has shown again what it had; a better plan may have come when it was not listening.
      if (report !== this.#report && plan(report) !== this.#shown) setTimeout(() => this.#hand());
      return;
    }
    if (question !== this.#question) [this.#report, this.#at, this.#is] = [report, report, undefined];
    this.#question = question;
    this.#asked = asked;
    this.#goal = plainCount.test(asked ?? "") ? Number(asked) : Infinity;
    this.#shown = this.#latest = plan(report);
    this.#found = this.tried;
    this.#begin();
  }

  #rest(why) {
    this.#state = why;
    this.#tellState();
  }

  #tellState() {
    this.#tell({ state: this.#state, tried: figure(this.#at, "tried_now")?.text, goal: this.#asked });
  }

  #begin() {
    const run = ++this.#run;
    this.#halt = false;
    this.#since = performance.now();
    if (!figure(this.#at, "tried_now")) return this.#rest("none"); // no plan to better
    this.#looking = this.#look(run);
  }

  async #look(run) {
    while (run === this.#run) {
      const why = this.#enough();
      if (why) return this.#end(why);
      const tried = this.tried, goal = this.#goal;
      this.#state = goal === Infinity ? "looks" : "repeats";
      this.#tellState();
      const began = performance.now();
      const next = String(tried > goal ? 0 : Math.min(tried + this.#step, goal));
      const at = await this.#ask("day-look", next);
      this.#pace(performance.now() - began);
      // The report is long, so it is asked for only where the plan is another.
      const is = figure(at, "plan_is")?.text, report = is === this.#is ? this.#report : await this.#ask("day", next);
      if (run !== this.#run) return;
      if (!is || !report) return this.#rest("failed");
      [this.#at, this.#is, this.#report] = [at, is, report];
      this.#compare();
      await new Promise((done) => setTimeout(done)); // what the person does comes first
    }
  }

  // Shows a better plan, but not beneath a finger that is about to touch the one that is shown.
  #compare() {
    const says = plan(this.#report);
    if (says !== this.#latest) {
      this.#since = performance.now();
      this.#found = this.tried;
    }
    this.#latest = says;
    if (says !== this.#shown && performance.now() - this.#touched > touch) this.#hand();
  }

  // Why not to look further, or nothing.
  #enough() {
    const { tried } = this;
    if (this.#halt) {
      this.#goal = Infinity; // the form's number is that of the plan it shows
      return "stopped";
    }
    if (tried < this.#goal + stride && !figure(this.#at, "tried_next")) return tried < limit ? "proven" : "tired";
    if (tried >= this.#goal && tried < this.#goal + stride) return "reached";
    if (document.hidden) return "hidden";
    return this.#goal === Infinity && performance.now() - this.#since > patience ? "tired" : "";
  }

  async #ask(id, tried) {
    const form = write(parse(this.#question).set("tried", tried));
    try {
      return await this.#core.report(id, id === "day" ? form : write(new Map([["day_form", form]])));
    } catch {
      return undefined; // the page says so when it asks itself
    }
  }

  // Twice as many steps where a slice was short, half as many where it was long.
  #pace(ms) {
    if (ms < slice / 2) this.#step = Math.min(most, 2 * this.#step);
    if (ms > slice) this.#step = Math.max(least, this.#step / 2);
  }

  #end(why) {
    if (why === "proven") this.#found = this.tried; // so that it says so at once when it is opened again
    this.#hand();
    this.#rest(why);
  }

  // Gives the page the plan, and its form the steps that it took. A form that asks for a number of steps keeps it.
  #hand() {
    if (this.tried === 0 || this.#hands > 0) return;
    this.#shown = plan(this.#report);
    this.#asked = String(this.#goal === Infinity ? this.#found : this.#goal);
    this.#main.dispatchEvent(new CustomEvent("better", { detail: { question: this.#question, text: this.#asked, report: this.#report } }));
  }
}

const figure = (report, key) => report?.figures.find((f) => f.key === key);

// What of a report makes a plan another one.
const plan = (report) => JSON.stringify([report.verdict, report.lists, report.figures.filter((f) => !f.key.startsWith("tried_"))]);
