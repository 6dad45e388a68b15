// The form that a tab shows on a page, with what belongs to it. Each tab has its own and comes back to it; a new tab takes
// up what was written last in any. What one tab writes over of another is put by, for the next new tab to offer.
import { answered, parse, store, tab, write } from "./state.js";

const names = ["form", "address", "aside", "link"];

export class TabForm {
  #page;
  #values;
  #last; // the form for every tab as this tab wrote it or took it up

  constructor(page) {
    this.#page = page;
    const own = tab.get("own:" + page);
    /** Whether this tab has not shown the page before. */
    this.fresh = own === "";
    this.#values = this.fresh ? new Map(names.map((name) => [name, this.#shared(name)])) : parse(own, Infinity); // several forms in one
    this.#last = this.get("form");
  }

  /** One of the names, blank for none. */
  get(name) {
    return this.#values.get(name) ?? "";
  }

  /** Keeps one of the names; false when the browser refuses. */
  set(name, text) {
    const changed = this.get(name) !== text;
    this.#values.set(name, text);
    tab.set("own:" + this.#page, write(new Map([...this.#values, ["shown", "1"]])));
    const other = this.#shared("form"), leads = other === this.#last;
    if (!leads && !changed) return true; // looked at again, no more
    if (!leads && other !== this.get("form") && answered(parse(other))) store.set("other:" + this.#page, other);
    const kept = (leads ? [name] : names).every((n) => store.set(`${n}:${this.#page}`, this.get(n)));
    if (kept) this.#last = this.#shared("form");
    return kept;
  }

  /** The form of another tab that this one, or a third, has written over; blank for none. */
  get other() {
    const text = store.get("other:" + this.#page);
    return text === this.get("form") ? "" : text;
  }

  forgetOther() {
    store.set("other:" + this.#page, "");
  }

  #shared(name) {
    return store.get(`${name}:${this.#page}`);
  }
}
