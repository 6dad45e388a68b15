// One kind of thing on the shelf: its list, and what can be done with each item.
import { Conflict } from "./db.js";
import { copy, el, fill } from "./dom.js";
import { notify } from "./notices.js";
import { button } from "./shelf-ask.js";
import { exportItems } from "./shelf-file.js";
import { fieldsOf, reading } from "./shelf-fits.js";
import { Finder } from "./shelf-finder.js";
import { openItem } from "./shelf-shown.js";
import { formOf, freeName, inUse, itemFrom, itemsOf, keepAll, nameKeys, rememberUnits, taken, takeOff, usable, use } from "./shelf-store.js";
import { parse } from "./state.js";
import { say } from "./words.js";

// What is said of an item beside its name.
const telling = { "data-sheet": ["role", "ratio", "ratio_by", "sheet_dated"], gun: ["gun", "pressure"], booth: ["air_speed", "altitude"], shop: ["painter", "cup_size"] };

export class Shelf {
  #kind;
  #page;
  #core;
  #fields;
  #finder = new Finder((item) => this.#line(item));
  #section;
  #words = "";
  #removed = new Map(); // items taken off here, by id, for Undo

  constructor(section, core) {
    this.#section = section;
    this.#core = core;
    this.#kind = section.dataset.kind;
    this.#page = section.dataset.page;
    this.#fields = fieldsOf(section.querySelector("template").content);
    section.append(this.#finder.element);
    section.querySelector("a.new").addEventListener("click", () => openItem(this.#kind, "new"));
  }

  get count() {
    return this.#finder.count;
  }

  async load(words) {
    const items = await itemsOf(this.#kind);
    for (const item of items) this.#removed.delete(item.id);
    this.#finder.take([...items, ...this.#removed.values()]);
    this.#words = words;
    const active = this.#section.contains(document.activeElement) && document.activeElement.closest("[data-item]")?.dataset.item;
    this.#finder.again(words);
    this.#title(items.length);
    if (active) this.#section.querySelector(`[data-item="${active}"]`)?.querySelector("a, button")?.focus();
  }

  show(words) {
    this.#words = words;
    this.#finder.show(words);
  }

  #title(n) {
    fill(this.#section, { count: n > 0 ? String(n) : "" });
  }

  #line(item) {
    if (this.#removed.has(item.id)) return this.#undo(item);
    const open = el("a", { class: "item-name", href: `${this.#page}?item=${item.id}` }, item.name);
    open.addEventListener("click", () => openItem(this.#kind, item.id));
    const form = parse(item.form);
    const facts = telling[this.#kind].filter((key) => form.has(key)).map((key) => reading(this.#fields.get(key), form.get(key), form.get(key + ".unit")));
    const line = el("li", { class: "item", "data-item": item.id }, el("p", { class: "item-says" }, open, " ", el("span", { class: "soft" }, facts.join(" · "))));
    if (usable.includes(this.#kind)) line.append(this.#useButton(item));
    const more = button(say("More"), () => {
      const opens = more.getAttribute("aria-expanded") !== "true";
      more.setAttribute("aria-expanded", String(opens));
      line.querySelector(".item-tools")?.remove();
      if (opens) line.append(this.#tools(item, line, more));
    });
    more.setAttribute("aria-expanded", "false");
    more.setAttribute("aria-label", say("More for {name}", { name: item.name }));
    line.append(more);
    return line;
  }

  #useButton(item) {
    const used = inUse(this.#kind) === item.id;
    const b = button(used ? say("In use") : say("Use"), async () => {
      const report = this.#kind === "shop" && !used ? await this.#core.report("shop", item.form) : undefined;
      if (use(this.#kind, used ? "" : item.id, formOf(item), report)) this.#finder.again(this.#words);
      this.#section.querySelector(`[data-item="${item.id}"] .use`)?.focus();
    }, used ? "plain use used" : "plain use");
    b.setAttribute("aria-pressed", String(used));
    b.setAttribute("aria-label", say("{name} is the one in use", { name: item.name }));
    return b;
  }

  #tools(item, line, more) {
    return el("p", { class: "item-tools" },
      button(say("Duplicate"), () => this.#duplicate(item)),
      button(say("Rename"), () => this.#rename(item, line, more)),
      button(say("Export"), () => exportItems([item], item.name)),
      button(say("Remove"), () => this.#remove(item), "plain warn"));
  }

  async #duplicate(item) {
    const twin = itemFrom(this.#kind, formOf(item, await freeName(this.#kind, say("{name}, another", { name: item.name }))));
    const kept = await keepAll(twin);
    if (kept) notify(say("“{name}” is on the shelf now.", { name: twin.name }));
  }

  #rename(item, line, more) {
    const box = el("input", { type: "text", maxlength: "200", "aria-label": say("New name") });
    box.value = item.name;
    const away = () => {
      line.querySelector(".item-tools")?.remove();
      more.setAttribute("aria-expanded", "false");
      more.focus();
    };
    const done = async (event) => {
      event.preventDefault();
      const name = box.value.trim();
      if (!name || name === item.name) return away();
      if (await taken(this.#kind, name, item.id)) return notify(say("“{name}” is on the shelf already. Choose another name.", { name }));
      const form = formOf(item, name);
      try {
        await keepAll({ ...item, ...itemFrom(this.#kind, form), id: item.id });
      } catch (error) {
        if (!(error instanceof Conflict)) throw error;
        notify(say("Another tab has changed “{name}” meanwhile. Nothing was kept.", { name: item.name }));
      }
    };
    const ask = el("form", { class: "item-tools rename" }, box, el("button", { type: "submit", class: "action" }, say("Rename")), button(say("Leave it"), away));
    ask.addEventListener("submit", done);
    line.querySelector(".item-tools").replaceWith(ask);
    box.select();
  }

  async #remove(item) {
    this.#removed.set(item.id, item);
    if (!(await takeOff(item))) {
      this.#removed.delete(item.id);
      return;
    }
    if (inUse(this.#kind) === item.id) {
      use(this.#kind, "", formOf(item));
      item.used = true;
    }
    this.#section.querySelector(`[data-item="${item.id}"] button`)?.focus();
  }

  #undo(item) {
    const line = copy("part-undo");
    line.dataset.item = item.id;
    fill(line, { says: say("{name} removed.", { name: item.name }) });
    line.querySelector("button").addEventListener("click", async () => {
      const { used, ...whole } = item;
      this.#removed.delete(item.id);
      if (!(await keepAll(whole))) this.#removed.set(item.id, item);
      else if (used) use(this.#kind, item.id, formOf(item), this.#kind === "shop" ? await this.#core.report("shop", item.form) : undefined);
    });
    return line;
  }
}
