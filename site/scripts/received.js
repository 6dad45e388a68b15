// The customer's page: data sheets that came by link. It says where they say they are from, in plain text, and keeps
// nothing until the person has seen what that would add and change.
import { formText } from "./address.js";
import { Core } from "./core.js";
import { byId, el } from "./dom.js";
import { formFor, mostSheets, sheetsOf, targetOf } from "./handed.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { button } from "./shelf-ask.js";
import { differences, fieldsOf } from "./shelf-fits.js";
import { ImportPreview } from "./shelf-import.js";
import { tellRefused, textOf } from "./shelf-store.js";
import { whole } from "./share.js";
import { parse, write } from "./state.js";
import { say } from "./words.js";

/** Opens the page. */
export async function open(main) {
  addEventListener("hashchange", () => location.reload());
  const text = formText(), form = parse(text);
  if (form.size > 0) await new Received(main, text, form).show();
  else byId("received-none").hidden = false;
  main.dataset.ready = "yes";
}

class Received {
  #core;
  #text;
  #form;
  #sheets;
  #fields;

  constructor(main, text, form) {
    this.#core = new Core(main.dataset.core);
    this.#text = text;
    this.#form = form;
    this.#sheets = sheetsOf(form).slice(0, mostSheets); // the core says so where there are more
    this.#fields = fieldsOf(byId("sheet-fields").content);
  }

  async show() {
    if (!whole(this.#text, this.#form, (key) => this.#knows(key))) notify(say("This link is incomplete or damaged: some of it could not be read. Ask for it again."));
    let report, head;
    try {
      report = await this.#core.report("customer-sheets", write(this.#form));
      head = await this.#core.report("customer-sheets", write(this.#head));
    } catch (error) {
      notify(error.message);
      return;
    }
    this.#origin(head);
    this.#problems(report.problems, report.verdict.filter((r) => r.level === "stop"));
    byId("received-sheets").replaceChildren(...this.#sheets.map((sheet) => this.#line(sheet)));
    const tools = this.#sheets.length > 0 ? [...this.#links(), button(say("Keep on this device"), () => this.#keep(), "action")] : [];
    byId("received-tools").replaceChildren(...tools);
    byId("received").hidden = false;
  }

  // The link as if its sheets had no fault: what it says of itself can be read all the same.
  get #head() {
    return new Map([...this.#form].filter(([key]) => key === "sender" || key === "shop_note")).set("sheet.1.product", "1");
  }

  #knows(key) {
    const [table, , column] = key.replace(/\.unit$/, "").split(".");
    return ["units", "sender", "shop_note", "opens"].includes(table) || (table === "sheet" && (column === undefined || this.#fields.has(column)));
  }

  // What a link says of itself is shown as it stands, as text.
  #origin(report) {
    const told = (key) => report.figures.find((f) => f.key === key)?.text;
    const from = told("said_from"), note = told("said_note");
    byId("received-from").textContent = from ? say("From: {sender}", { sender: from }) : say("The link does not say who it is from, or what it says cannot be read.");
    byId("received-note").textContent = note ? say("Note: {note}", { note }) : "";
  }

  #problems(problems, stops) {
    const box = byId("received-problems");
    box.hidden = problems.length + stops.length === 0;
    const says = (p) => (p.row ? say("{row}: {problem}", { row: p.row, problem: sentence(p) }) : sentence(p));
    box.querySelector("ul").replaceChildren(...[...problems.map(says), ...stops.map((r) => say("{why}. {what}.", { why: r.why, what: r.do }))].map((text) => el("li", {}, text)));
  }

  #line(sheet) {
    const lines = differences(this.#fields, new Map(), sheet.form);
    return el("li", {}, el("details", {}, el("summary", {}, el("b", {}, sheet.name || say("Without a name")), " ", el("span", { class: "soft" }, say("What it says: {n}", { n: lines.length }))), el("ul", { class: "changes" }, ...lines)));
  }

  #links() {
    const target = targetOf(this.#form.get("opens")), units = this.#form.get("units");
    if (!target) return [];
    const link = (sheets, label) => el("a", { class: "action", href: `${target.page}#${write(formFor(target, sheets, units))}` }, label);
    if (target.table) return [link(this.#sheets, say("Open “{calculator}” with them", { calculator: target.title }))];
    return this.#sheets.map((sheet) => link([sheet], say("Open “{calculator}” with {product}", { calculator: target.title, product: sheet.name })));
  }

  async #keep() {
    const place = byId("received-import");
    const items = this.#sheets.filter((sheet) => sheet.name).map(({ name, form }) => ({ kind: "data-sheet", name, form: textOf("data-sheet", form) }));
    const words = { title: say("What these data sheets would change on this device"), away: say("Keep nothing") };
    const preview = new ImportPreview(() => this.#fields, this.#core, () => place.replaceChildren(), words, true);
    place.replaceChildren(preview.element);
    await preview.show(items);
    tellRefused();
  }
}
