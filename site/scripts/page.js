// The page of one calculator: form in, report out.
import { formText } from "./address.js";
import { Card } from "./answer.js";
import { Asking } from "./asking.js";
import { Bar } from "./bar.js";
import { byId, show } from "./dom.js";
import { Form } from "./form.js";
import { notify } from "./notices.js";
import { Keeper } from "./keeper.js";
import { Problems } from "./problems.js";
import { rowPattern, Table } from "./rows.js";
import { offerSharing, whole } from "./share.js";
import { answered, longest, parse, store, write } from "./state.js";
import { say } from "./words.js";

export class Page {
  #main;
  #id;
  #asking;
  #card = new Card();
  #form;
  #tables;
  #problems;
  #bar;
  #keeper;
  #demo; // the form of the example
  #paced; // the key of how long the core looks for a better answer, where it does
  #last; // the form's text without that

  constructor(main) {
    this.#main = main;
    this.#id = main.dataset.calculator;
    this.#paced = main.dataset.paced;
    this.#asking = new Asking({ id: this.#id, file: main.dataset.core, paced: this.#paced }, () => this.#form.values,
      (report) => this.#show(report), (error) => this.#unanswered(error));
    this.#demo = parse(byId("try").querySelector("a").hash.slice(1));
    this.#keeper = new Keeper(this.#id, write(this.#demo), notify);
    this.#form = new Form(byId("form"), () => this.#typed());
    this.#tables = [...main.querySelectorAll("[data-table]")].map((t) => new Table(t, this.#form));
    this.#problems = new Problems(main, this.#form, this.#tables);
    this.#bar = new Bar((key) => this.#label(key), (key) => this.#problems.jump(key));
    offerSharing(byId("share"), () => this.#form.values);
    byId("empty")?.addEventListener("click", () => this.#replace(new Map(), say("The form is empty.")));
    addEventListener("hashchange", () => this.#follow());
    this.#rememberPlaces();
    main.addEventListener("click", (event) => this.#within(event));
    main.addEventListener("fill", ({ detail }) => this.#fill(detail));
    main.addEventListener("better", ({ detail }) => this.#better(detail));
  }

  open() {
    const form = this.#keeper.open();
    if (form.size === 0 && store.get("units")) form.set("units", store.get("units"));
    for (const [key, text] of this.#form.early) form.set(key, text);
    this.#load(form);
    this.#sayLinked();
    this.#inspect(formText()); // last, so that it is what is seen
    if (this.#keeper.working) import("./timer-working.js").then(({ sayWhose }) => sayWhose(this.#keeper.working));
    this.#offerOther();
    document.querySelectorAll('.top input[name="units"]').forEach((r) => r.addEventListener("change", () => store.set("units", r.value)));
  }

  #load(form) {
    this.#form.values = form;
    this.#form.touched.clear();
    for (const table of this.#tables) table.load();
    // A fresh form starts with a row to fill in.
    if (this.#tables[0]?.items.length === 0 && !this.#tables[0].optional) this.#tables[0].add({ focus: false });
    this.#form.show();
    this.#changed();
  }

  // Another form has been put into the address: a pasted link, the example, or the way back.
  #follow() {
    const hash = formText();
    this.#takeUp(hash);
    this.#inspect(hash); // last, so that it is what is seen
  }

  #takeUp(hash) {
    if ((hash !== "" && !hash.includes("=")) || hash.length > longest) return;
    const form = parse(hash), before = write(this.#form.values);
    if (write(form) === before) return;
    if (form.size === 0) this.#replace(form, say("The form is empty."));
    else this.#fromLink(form);
  }

  #replace(form, says) {
    const before = this.#form.values;
    this.#load(form);
    if (answered(before)) notify(says, { [say("Put mine back")]: () => this.#load(before), [say("Close")]: undefined });
  }

  // Two tabs of one page each keep their own form: a new one shows the last, and offers the other.
  #offerOther() {
    const other = this.#keeper.takeOther();
    if (!other) return;
    notify(say("Another tab of this page held other numbers."), {
      [say("Show those")]: () => this.#replace(parse(other), say("The other tab’s numbers are shown.")), [say("Close")]: undefined,
    });
  }

  // Puts values from elsewhere into the form: texts by key, blank to clear one.
  #fill({ values, says, undone }) {
    const before = this.#form.values, form = new Map(before);
    for (const [key, text] of values) {
      if (text) form.set(key, text);
      else form.delete(key);
    }
    this.#load(form);
    if (!says) return; // an embedded page is filled in by the page around it
    const undo = () => {
      this.#load(before);
      undone?.();
    };
    notify(says, { [say("Undo")]: undo, [say("Close")]: undefined });
  }

  #fromLink(form) {
    this.#keeper.follow(write(form), write(this.#form.values));
    this.#load(form);
    this.#sayLinked();
  }

  // Until the person has chosen, the notice comes back with the page.
  #sayLinked() {
    if (!this.#keeper.linked) return;
    const text = this.#keeper.mine;
    const keep = () => this.#decide();
    const putBack = () => {
      const link = this.#form.values;
      this.#load(parse(text));
      this.#decide();
      notify(say("Your own form is back."), { [say("Show the link’s again")]: () => this.#fromLink(link), [say("Close")]: undefined });
    };
    notify(say("This form came from a link. Compare it with the data sheet before you mix."), text ? { [say("Keep it")]: keep, [say("Put mine back")]: putBack } : { [say("Close")]: keep });
  }

  #decide() {
    this.#keeper.decided();
    this.#changed();
    this.#sayLinked();
  }

  // Says so when not all of a link can be read. A mere place on the page is no form.
  #inspect(hash) {
    if (hash === "" || byId(hash)) return;
    if (!whole(hash, parse(hash), (key) => this.#knows(key))) notify(say("This link is incomplete or damaged: some of it could not be read. Ask for it again."));
  }

  // What was found for another form is no longer worth looking for.
  #typed() {
    if (this.#paced && this.#last !== this.#rest()) {
      this.#form.values.delete(this.#paced);
      this.#form.show(this.#form.field(this.#paced));
    }
    this.#changed();
  }

  // A better answer to the same form has been found, by looking as long as text says.
  #better({ question, text, report }) {
    if (!this.#asking.better(question, report)) return;
    this.#form.values.set(this.#paced, text);
    this.#form.show(this.#form.field(this.#paced));
    this.#keeper.keep(write(this.#form.values));
    this.#show(report);
  }

  // The form without how long to look.
  #rest() {
    return write(new Map([...this.#form.values].filter(([key]) => key !== this.#paced)));
  }

  #changed() {
    this.#last = this.#rest();
    const text = write(this.#form.values);
    this.#keeper.keep(text === "units=si" ? "" : text);
    byId("try").hidden = answered(this.#form.values);
    this.#sayInvented();
    this.#asking.ask();
  }

  // A job is the demo as long as most of it stands as the demo has it.
  #sayInvented() {
    const line = byId("invented");
    if (!line) return;
    const demo = [...this.#demo];
    const kept = demo.filter(([key, value]) => this.#form.values.get(key) === value);
    line.hidden = kept.length * 2 < demo.length;
  }

  #unanswered(error) {
    document.body.classList.add("stale"); // what the card shows is the answer to other numbers
    notify(error.message);
  }

  #show(report) {
    const whole = () => this.#asking.whole(), { question, core, current } = this.#asking;
    document.body.classList.remove("stale");
    for (const table of this.#tables) table.describe(report);
    this.#problems.show(report);
    this.#card.show(report, whole);
    this.#bar.show(report, this.#card.mainFigures(report));
    if (current) this.#form.retype(report.retyped);
    this.#main.dispatchEvent(new CustomEvent("answer", { detail: { id: this.#id, form: new Map(this.#form.values), report, whole, current, question, core } }));
  }

  // What the form calls a key.
  #label(key) {
    return this.#field(key)?.dataset.label ?? key;
  }

  // The field with a key; one in a closed row is known by the row's template.
  #field(key) {
    const [table, n, column, ...more] = key.split(".");
    const blank = this.#main.querySelector(`[data-table="${CSS.escape(table)}"] template`)?.content;
    if (!blank || n === undefined) return this.#form.field(key);
    return rowPattern.test(n) && more.length === 0 ? blank.querySelector(`[data-field="${CSS.escape(`${table}.0.${column}`)}"]`) : undefined;
  }

  #knows(key) {
    return key === "units" || key.startsWith("units.") || key.endsWith(".unit") || Boolean(this.#field(key));
  }

  // Links within the page move to their goal and leave the address, which holds the form, alone.
  #within(event) {
    const link = event.target.closest('a[href^="#"]');
    const id = link?.getAttribute("href").slice(1);
    if (!link || link.dataset.jump || id.includes("=")) return;
    event.preventDefault();
    const goal = byId(id);
    if (!goal) return;
    if (goal.matches("details")) goal.open = true;
    show(goal);
    (goal.querySelector(":scope > summary") ?? goal).focus({ preventScroll: true });
  }

  #rememberPlaces() {
    const name = "closed:" + this.#id;
    const closed = new Set(store.get(name).split(" "));
    for (const place of this.#main.querySelectorAll("details.place, details.card-place")) {
      place.open = !closed.has(place.id);
      place.addEventListener("toggle", () => {
        closed[place.open ? "delete" : "add"](place.id);
        store.set(name, [...closed].filter(Boolean).join(" "));
      });
    }
  }
}
