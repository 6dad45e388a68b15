// What a file would add to the shelf, change on it and leave, item by item, before anything is written.
import { Conflict, freshId } from "./db.js";
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { button } from "./shelf-ask.js";
import { differences, oldAndNew } from "./shelf-fits.js";
import { alike, formOf, freeOf, itemsOf, keepAll, kindName, kinds, namesOf, plain, textOf } from "./shelf-store.js";
import { parse } from "./state.js";
import { say } from "./words.js";

const slice = 40; // lines drawn at once
const turn = 25; // items that the core checks before the page is drawn again

/** Sets items of a file against the shelf: each with what stands there in its place, and what it makes of that. */
export async function compare(items) {
  const there = (await Promise.all(kinds.map((kind) => itemsOf(kind)))).flat();
  const byId = new Map(there.map((item) => [item.id, item])), taken = new Set();
  const byName = new Map();
  for (const item of there) {
    const key = item.kind + " " + plain(item.name);
    if (!byName.has(key)) byName.set(key, []);
    byName.get(key).push(item);
  }
  const claim = (item, old) => {
    taken.add(old.id);
    return { item, old };
  };
  // What is the same by its id comes first, so that nothing else of that name takes its place.
  const sameId = items.map((item) => {
    const old = item.id && byId.get(item.id);
    return old?.kind === item.kind ? claim(item, old) : undefined;
  });
  return items.map((item, i) => {
    const named = byName.get(item.kind + " " + plain(item.name))?.filter((old) => !taken.has(old.id)) ?? [];
    // An id that stands here for something of another kind says nothing; the item then gets one of its own.
    const fresh = byId.has(item.id) ? { ...item, id: undefined } : item;
    const plan = sameId[i] ?? (named.length === 1 && alike(named[0].name, item.name) ? claim(item, named[0]) : { item: fresh });
    plan.does = !plan.old ? "add" : plan.old.form === item.form ? "leave" : "change";
    return plan;
  });
}

export class ImportPreview {
  #fields; // the fields of each kind
  #core;
  #words;
  #strict;
  #plans;
  #write;
  #told = el("p", { role: "status" });

  /** done is called when the person is through with it; words are for what is no file. What has a problem is never ticked
   * beforehand, and where it is strict it cannot be. */
  constructor(fields, core, done, words = { title: say("What the file would change"), away: say("Put the file away") }, strict = false) {
    this.#fields = fields;
    this.#core = core;
    this.#words = words;
    this.#strict = strict;
    this.done = done;
    this.element = el("section", { class: "import", tabindex: "-1", "aria-label": words.title });
  }

  async show(items) {
    this.#plans = await compare(items);
    for (const plan of this.#plans) plan.ticked = plan.does !== "leave";
    this.#write = button(say("Do what is ticked"), () => this.#do(), "action");
    this.element.replaceChildren(el("h2", {}, this.#words.title), this.#told);
    this.element.scrollIntoView({ block: "start" });
    this.element.focus();
    await this.#check();
    this.element.append(
      this.#group("add", (n) => say("Would be added: {n}", { n })),
      this.#group("change", (n) => say("Would be changed: {n}", { n })),
      this.#group("leave", (n) => say("Stay as they are: {n}", { n })),
      el("p", { class: "kept-tools" }, this.#write, button(this.#words.away, () => this.done())));
    this.#count();
  }

  // The kind's own calculator reads each form, so that what cannot be right is seen before it is kept.
  async #check() {
    const news = this.#plans.filter((p) => p.does !== "leave");
    for (const [i, plan] of news.entries()) {
      if (i % turn === 0) this.#told.textContent = say("Checking {n} of {all}.", { n: i + 1, all: news.length });
      const report = await this.#core.report(plan.item.kind, plan.item.form);
      plan.problems = report.problems;
      if (plan.problems.length > 0) plan.ticked = false;
    }
  }

  #group(does, title) {
    const plans = this.#plans.filter((p) => p.does === does);
    const head = el("summary", {}, el("h3", {}, title(plans.length)));
    const list = el("ul", { class: "plans" }), more = button(say("Show more"), () => draw());
    const all = el("input", { type: "checkbox" });
    all.checked = plans.every((p) => p.ticked || p.problems?.length);
    all.addEventListener("change", () => {
      for (const p of plans) p.ticked = all.checked && !p.problems?.length; // those are ticked one by one
      for (const [i, box] of [...list.querySelectorAll(".tick-one")].entries()) box.checked = plans[i].ticked;
      this.#count();
    });
    const draw = () => {
      list.append(...plans.slice(list.children.length, list.children.length + slice).map((p) => this.#line(p)));
      more.hidden = list.children.length >= plans.length;
    };
    draw();
    const group = el("details", { class: "group-" + does }, head);
    group.open = does !== "leave" && plans.length > 0;
    if (does !== "leave" && plans.length > 1) group.append(el("p", {}, el("label", { class: "tick-all" }, all, el("span", {}, say("All of them")))));
    group.append(list, more);
    group.hidden = plans.length === 0;
    return group;
  }

  #line(plan) {
    const { item, old, problems = [] } = plan, fields = this.#fields(item.kind);
    const name = el("span", {}, el("b", {}, item.name), " ", el("span", { class: "soft" }, kindName(item.kind)));
    if (plan.does === "leave") return el("li", {}, name);
    const box = el("input", { type: "checkbox", class: "tick-one" });
    box.checked = plan.ticked;
    box.disabled = this.#strict && problems.length > 0;
    box.addEventListener("change", () => {
      plan.ticked = box.checked;
      this.#count();
    });
    const form = parse(item.form);
    const lines = differences(fields, parse(old?.form ?? ""), form);
    const strange = [...form.keys()].filter((key) => !known(fields, key));
    if (old && old.name !== item.name) lines.unshift(el("li", {}, oldAndNew(old.name, item.name)));
    const details = el("details", {}, el("summary", {}, old ? say("What changes: {n}", { n: lines.length }) : say("What it says: {n}", { n: lines.length })), el("ul", { class: "changes" }, ...lines));
    details.open = Boolean(old);
    return el("li", {}, el("label", {}, box, name), details,
      ...problems.map((p) => el("p", { class: "wrong" }, sentence(p))),
      strange.length > 0 ? el("p", { class: "soft" }, say("Not known here, and of no effect: {names}", { names: strange.slice(0, 5).join(", ") })) : "");
  }

  #count() {
    const n = this.#plans.filter((p) => p.ticked).length;
    this.#write.disabled = n === 0;
    this.#told.textContent = n === 0 ? say("Nothing is ticked.") : n === 1 ? say("1 item is ticked.") : say("{n} items are ticked.", { n });
  }

  // All or nothing. What another tab has changed since stops it.
  async #do() {
    const chosen = this.#plans.filter((p) => p.ticked);
    const records = [], names = {};
    for (const { item, old } of chosen) {
      names[item.kind] ??= await namesOf(item.kind);
      const name = old ? item.name : freeOf(names[item.kind], item.name);
      names[item.kind].add(plain(name));
      records.push({ ...item, name, form: name === item.name ? item.form : textOf(item.kind, formOf(item, name)), id: old?.id ?? item.id ?? freshId(), rev: old?.rev });
    }
    this.#write.disabled = true;
    try {
      if (!(await keepAll(...records))) return;
    } catch (error) {
      if (!(error instanceof Conflict)) throw error;
      notify(say("The shelf has changed meanwhile. Nothing was written: open the file again and look once more."));
      return;
    } finally {
      this.#write.disabled = false;
    }
    const added = chosen.filter((p) => p.does === "add").length;
    notify(say("Added: {added}. Changed: {changed}.", { added, changed: chosen.length - added }));
    this.done();
  }
}

function known(fields, key) {
  const name = key.endsWith(".unit") ? key.slice(0, -5) : key, [table, n] = name.split(".");
  return name === "units" || table === "units" || fields.has(n === undefined ? name : table);
}
