// Where a form is kept: in the browser at once, and in the address, from which it can be handed on.
import { formText, withForm } from "./address.js";
import { stillWorking, workingOf } from "./passing.js";
import { answered, parse, write } from "./state.js";
import { TabForm } from "./tab-form.js";
import { say } from "./words.js";

const addressed = () => write(parse(formText()));

export class Keeper {
  #page;
  #kept; // undefined for a timer's working, which is only shown
  #working; // the timer, else blank
  #example; // the form of the page's own example, as text
  #address = addressed();
  #text;
  #timer;
  #tell;
  #told = false;
  #held = false; // the stored form could not be put aside, so nothing is stored over it

  constructor(page, example, tell) {
    this.#page = page;
    this.#working = workingOf(page);
    this.#kept = this.#working ? undefined : new TabForm(page);
    this.#example = example;
    this.#tell = tell;
  }

  /** The form that the page opens with: the link's, else the one kept, else an empty one. */
  open() {
    const link = addressed(), kept = this.#get("form");
    if (!this.#kept) return parse(link);
    // A page that went in the middle of a number may have left its address behind what it kept.
    if (link === "" || link === this.#get("address")) return parse(kept);
    this.follow(link, kept);
    return parse(link);
  }

  /** A link takes the place of a form. That is put aside until the person has said which of them to keep. */
  follow(link, before) {
    this.#set("address", link);
    const mine = answered(parse(before)) ? before : "";
    if (link === before || (!mine && link === this.#example)) return;
    const aside = this.#get("aside");
    // Of one link after another, what was there before the first is put aside, unless a link's form has been changed.
    const untouched = aside && (!mine || before === this.#get("link"));
    if (!untouched) this.#held = !this.#set("aside", aside ? `#${mine}\n${aside}` : "#" + mine) && mine !== "";
    this.#set("link", link);
  }

  /** The timer whose working this is, blank for a form of the person's own. */
  get working() {
    return this.#working;
  }

  /** Whether the form came by a link and the person has not yet said to keep it. */
  get linked() {
    return this.#get("aside") !== "";
  }

  /** The form that the link took the place of, blank for none. */
  get mine() {
    return this.#get("aside").split("\n")[0].slice(1);
  }

  /** What another tab had typed on this page, for a new tab to offer; blank for none. It is asked for once. */
  takeOther() {
    const other = this.#kept?.fresh && !this.linked ? this.#kept.other : "";
    if (other) this.#kept.forgetOther();
    return other;
  }

  /** The person has chosen: what was put aside last is no longer needed. */
  decided() {
    this.#set("aside", this.#get("aside").split("\n").slice(1).join("\n"));
    this.#set("link", "");
    this.#held = false;
  }

  /** Keeps a form. The address follows soon: browsers limit how often it may change. */
  keep(text) {
    if (this.#held || !this.#set("form", text)) this.#warn();
    this.#text = text;
    // Left alone while it is right, so that a link followed at this moment is not overwritten.
    if (text !== this.#address) this.#timer ??= setTimeout(() => this.flush(), 400);
  }

  flush() {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const text = this.#text;
    if (text === undefined || text === this.#address) return;
    try {
      history.replaceState(null, "", withForm(text));
      this.#address = text;
      this.#set("address", text);
    } catch {
      this.#warn(); // too long, or changed too often for this browser
    }
  }

  #get(name) {
    return this.#kept?.get(name) ?? "";
  }

  #set(name, text) {
    if (this.#kept) return this.#kept.set(name, text);
    if (name === "address") stillWorking(this.#page, this.#working, text);
    return true;
  }

  #warn() {
    if (this.#told) return;
    this.#told = true;
    this.#tell(say("This browser keeps nothing. Share or copy the link to save your work."));
  }
}
