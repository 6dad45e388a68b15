// What a page asks its core: one question at a time, and always the latest.
import { Core } from "./core.js";
import { write } from "./state.js";
import { withShopUnits } from "./shop-units.js";

const slowly = 15000; // ms for an answer that may take its time
const plainCount = /^\d{1,7}$/; // anything else is for the core to judge

export class Asking {
  core;
  #id;
  #paced; // the key of how long the core looks for a better answer, where it does
  #form; // gives the page's form
  #show; // shows an answer
  #fail;
  #busy = false;
  #again = false;
  #last; // the last answer: its question, its report, and the report with its working once that is wanted

  constructor({ id, file, paced }, form, show, fail) {
    this.core = new Core(file, paced && slowly);
    this.#id = id;
    this.#paced = paced;
    this.#form = form;
    this.#show = show;
    this.#fail = fail;
  }

  /** The question that was answered last, and whether the form still asks it. */
  get question() {
    return this.#last.question;
  }

  get current() {
    return this.#last?.question === this.#question();
  }

  /** Asks what the form asks now. Keys pressed meanwhile are answered together. */
  async ask() {
    this.#again = this.#busy;
    if (this.#busy) return;
    this.#busy = true;
    try {
      do {
        this.#again = false;
        const question = this.#question();
        if (this.#last?.question !== question) this.#last = { question, report: await this.core.report(this.#id, this.#briefly(question)) };
        this.#show(this.#last.report);
      } while (this.#again);
    } catch (error) {
      this.#fail(error);
    } finally {
      this.#busy = false;
    }
  }

  /** Takes a better answer to a question, and reports whether the form still asks it. */
  better(question, report) {
    if (this.#busy || question !== this.#last?.question || !this.current) return false;
    this.#last = { question, report };
    return true;
  }

  /** The last report with its working. */
  whole() {
    const last = this.#last;
    last.whole ??= this.#paced ? Promise.resolve(last.report) : this.core.report(this.#id, last.question);
    last.whole.catch(() => (last.whole = undefined));
    return last.whole;
  }

  // The form, to be answered in the units of the shop in use. An answer that gets better the longer the core looks is
  // first asked for at once; another module looks further, and sends what is better.
  #question() {
    const form = new Map(withShopUnits(this.#form()));
    if (this.#paced && plainCount.test(form.get(this.#paced) ?? "0")) form.set(this.#paced, "0");
    return write(form);
  }

  // Writing the working down takes longer than all else, so that it is asked for when somebody opens it. A plan that gets
  // better brings its own: making it again would put the search back.
  #briefly(question) {
    return this.#paced ? question : `${question}&working=later`;
  }
}
