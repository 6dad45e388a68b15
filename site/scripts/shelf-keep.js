// The page of a data sheet, a gun, a booth or a shop: which item of the shelf it shows, whether that has changes that
// are not kept, and what to do about them.
import { Conflict, get, watch } from "./db.js";
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { button } from "./shelf-ask.js";
import { exportItems } from "./shelf-file.js";
import { differences, fieldsOf } from "./shelf-fits.js";
import { lineOf } from "./shelf-line.js";
import { alike, formOf, freeName, inUse, itemFrom, itemsOf, keepAll, nameKeys, rememberUnits, taken, tellRefused, textOf } from "./shelf-store.js";
import { asked, forget, noteForm, remember, shownBefore } from "./shelf-shown.js";
import { answered, parse } from "./state.js";
import { say } from "./words.js";

export class KeptForm {
  #main;
  #kind;
  #item; // as it was when this form was taken from it, or undefined
  #form = new Map();
  #report;
  #newer; // the item as another tab has changed it, or null where it was taken off the shelf
  #status = el("p", { class: "kept-status", role: "status" });
  #tools = el("p", { class: "kept-tools" });
  #other = el("div", { class: "shelf-panel", hidden: "" });
  #refused = false;

  constructor(main, kind) {
    this.#main = main;
    this.#kind = kind;
    lineOf(main).prepend(this.#status, this.#tools, this.#other);
    main.addEventListener("answer", ({ detail }) => this.#follow(detail));
    addEventListener("hashchange", () => { // a pasted link is nothing of the shelf's
      this.#item = undefined;
      forget(kind);
    });
  }

  /** Takes up the item that the page was opened for, or showed before, once it stands. */
  async begin(ready, linked) {
    this.#follow((await ready).detail);
    const id = asked(this.#kind);
    if (id === "new") {
      this.#show(new Map(), undefined, say("The form is empty, for another one."));
    } else if (id) {
      const item = await get("profile", id);
      if (item?.kind === this.#kind) this.#show(parse(item.form), item, say("“{name}” is shown as it is on the shelf.", { name: item.name }));
      else notify(say("It is no longer on the shelf."));
    } else if (!linked && answered(this.#form)) {
      const before = shownBefore(this.#kind), item = before && (await get("profile", before.id));
      if (item) {
        this.#item = { ...item, rev: before.rev };
        if (item.rev !== before.rev) this.#newer = item;
      }
    }
    watch((kind) => kind === "profile" && this.#look());
    this.#refused = await tellRefused(() => this.#export());
    this.#draw();
  }

  #follow({ form, report }) {
    this.#form = form;
    this.#report = report;
    noteForm(this.#kind, form);
    if (!answered(form) && this.#item) this.#take(undefined); // emptied, so it is the item no longer
    this.#draw();
  }

  get #text() {
    return textOf(this.#kind, this.#form);
  }

  get #name() {
    return this.#form.get(nameKeys[this.#kind]) ?? "";
  }

  // Puts a whole form on the page, which offers the one before again.
  #show(form, item, says) {
    const before = this.#item;
    this.#take(item);
    if (item ? this.#text === item.form : !answered(this.#form)) return;
    const values = new Map([...this.#form.keys()].map((key) => [key, ""]));
    for (const [key, text] of form) values.set(key, text);
    if (this.#kind !== "shop" && this.#form.has("units")) values.set("units", this.#form.get("units"));
    this.#form = new Map([...values].filter(([, text]) => text));
    this.#main.dispatchEvent(new CustomEvent("fill", { detail: { values, says, undone: () => this.#take(before) } }));
  }

  #take(item) {
    this.#item = item;
    this.#newer = undefined;
    if (item) remember(this.#kind, item);
    else forget(this.#kind);
    this.#draw();
  }

  // Another tab may have changed the item.
  async #look() {
    const item = this.#item, now = item && (await get("profile", item.id));
    if (!item || this.#item !== item) return; // something else is shown by now
    if (!now) this.#newer = null;
    else if (now.rev !== item.rev) this.#newer = now;
    this.#draw();
  }

  #draw() {
    const name = this.#item?.name, same = this.#item && this.#text === this.#item.form;
    const another = button(say("Keep as another"), () => this.#keepNew()), shelf = el("a", { class: "plain", href: "shelf.html" }, say("To the shelf"));
    let says, tools;
    if (!this.#item) {
      says = answered(this.#form) ? say("This is not on the shelf.") : say("Fill it in and keep it: it then fills your other forms.");
      tools = [button(say("Keep on the shelf"), () => this.#keepNew(), "action"), shelf];
    } else if (this.#newer === null) {
      says = say("“{name}” was taken off the shelf elsewhere.", { name });
      tools = [button(say("Keep on the shelf"), () => this.#keepNew(), "action"), shelf];
    } else if (this.#newer) {
      says = say("“{name}” was changed elsewhere since it was shown here.", { name });
      tools = [button(say("Compare both"), () => this.#compare(), "action"), shelf];
    } else if (same) {
      says = say("“{name}”, as it is on the shelf.", { name });
      tools = [shelf, button(say("Start another"), () => this.#show(new Map(), undefined, say("The form is empty, for another one.")))];
    } else {
      says = say("“{name}”, with changes that are not kept.", { name });
      const changes = button(say("Keep changes"), () => this.#keepChanges(), alike(this.#name, name) ? "action" : "plain");
      tools = [changes, another, button(say("Put back"), () => this.#show(parse(this.#item.form), this.#item, say("“{name}” is shown as it is on the shelf.", { name }))), shelf];
    }
    if (this.#refused) tools.push(button(say("Export"), () => this.#export()));
    const key = [says, ...tools.map((t) => t.textContent)].join("|");
    if (this.#status.dataset.key === key) return;
    this.#status.dataset.key = key;
    this.#status.textContent = says;
    this.#tools.replaceChildren(...tools);
  }

  #named() {
    if (this.#name) return true;
    notify(say("Give it a name first."));
    this.#main.querySelector(`[name="${nameKeys[this.#kind]}"]`).focus();
    return false;
  }

  async #keepNew(sure = false) {
    if (!this.#named()) return;
    const same = sure ? undefined : (await itemsOf(this.#kind)).find((item) => item.id !== this.#item?.id && alike(item.name, this.#name));
    if (same) {
      this.#take(same);
      return this.#compare(say("“{name}” is on the shelf already.", { name: same.name }), same);
    }
    const name = await freeName(this.#kind, this.#name);
    const kept = await this.#put(itemFrom(this.#kind, new Map([...this.#form, [nameKeys[this.#kind], name]])));
    if (kept && name !== this.#name) this.#show(parse(kept.form), kept, say("It is kept as “{name}”, because the other name is taken.", { name }));
  }

  async #keepChanges(rev = this.#item.rev) {
    if (!this.#named()) return;
    if (!alike(this.#name, this.#item.name) && (await taken(this.#kind, this.#name, this.#item.id))) {
      return notify(say("“{name}” is on the shelf already. Choose another name.", { name: this.#name }));
    }
    try {
      await this.#put({ ...this.#item, ...itemFrom(this.#kind, this.#form), id: this.#item.id, rev });
    } catch (error) {
      if (!(error instanceof Conflict)) throw error;
      await this.#look();
      this.#compare();
    }
  }

  async #put(item) {
    const [kept] = (await keepAll(item)) ?? [];
    if (!kept) return undefined;
    this.#close();
    this.#take(kept);
    if (this.#kind === "shop" && inUse("shop") === kept.id) rememberUnits(formOf(kept), this.#report);
    return kept;
  }

  #close() {
    this.#other.hidden = true;
    this.#other.replaceChildren();
  }

  // Both stand side by side, and nothing is written before the person has said which.
  #compare(says = say("It was changed elsewhere. Which one do you want?"), other = this.#newer) {
    const fields = fieldsOf(this.#main.querySelector("#form"));
    const rows = differences(fields, parse(other.form), this.#form);
    const choice = (label, run, look) => button(label, () => {
      this.#close();
      run();
    }, look);
    this.#other.replaceChildren(
      el("p", {}, says),
      el("p", { class: "soft" }, say("Crossed out: on the shelf. Underlined: in this form.")),
      el("ul", { class: "changes" }, ...rows),
      el("p", { class: "kept-tools" },
        choice(say("Keep this form"), () => this.#keepChanges(other.rev), "action"),
        choice(say("Show the one on the shelf"), () => this.#show(parse(other.form), other, say("“{name}” is shown as it is on the shelf.", { name: other.name }))),
        choice(say("Keep this form as another"), () => this.#keepNew(true))));
    this.#other.hidden = false;
    this.#other.querySelector("button").focus();
  }

  #export() {
    if (this.#named()) exportItems([this.#item ? { ...this.#item, form: this.#text, name: this.#name } : itemFrom(this.#kind, this.#form)], this.#name);
  }
}
