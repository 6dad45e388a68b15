// Finds items by words, at once among thousands, and shows them a slice at a time.
import { el } from "./dom.js";
import { say } from "./words.js";

const slice = 40; // items drawn at once

/** Text as it is searched: lower case, accents taken off. */
export const plainText = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

const spaced = (form) => {
  try {
    return decodeURIComponent(form.replaceAll("+", " "));
  } catch {
    return form;
  }
};

export class Finder {
  #list;
  #more;
  #draw;
  #items = [];
  #found = [];
  #drawn = 0;

  /** draw makes the element of an item. */
  constructor(draw) {
    this.#draw = draw;
    this.#list = el("ul", { class: "found" });
    this.#more = el("button", { type: "button", class: "plain" }, say("Show more"));
    this.#more.addEventListener("click", () => {
      const next = this.#drawn;
      this.#slice();
      this.#list.children[next]?.querySelector("a, button, input")?.focus();
    });
    this.element = el("div", {}, this.#list, this.#more);
  }

  get count() {
    return this.#found.length;
  }

  /** Takes the items to find among, in the order of their names. */
  take(items) {
    this.#items = items.map((item) => ({ item, text: plainText(`${item.name} ${spaced(item.form)}`), name: plainText(item.name) }));
    this.#items.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : a.item.id < b.item.id ? -1 : 1));
  }

  /** Shows the items that have all of these words. Those that have them in their names come first. */
  show(words = "", atLeast = slice) {
    const wanted = plainText(words).split(/\s+/).filter(Boolean);
    const holds = (text) => wanted.every((w) => text.includes(w));
    const hits = wanted.length > 0 ? this.#items.filter(({ text }) => holds(text)) : this.#items;
    const named = wanted.length > 0 ? hits.filter(({ name }) => holds(name)) : hits;
    this.#found = (named.length < hits.length ? [...named, ...hits.filter((h) => !holds(h.name))] : named).map(({ item }) => item);
    this.#list.replaceChildren();
    this.#drawn = 0;
    this.#slice(atLeast);
  }

  /** Draws the same again, as far as it was drawn. */
  again(words) {
    this.show(words, Math.max(slice, this.#drawn));
  }

  #slice(n = slice) {
    const end = Math.min(this.#drawn + n, this.#found.length);
    this.#list.append(...this.#found.slice(this.#drawn, end).map(this.#draw));
    this.#drawn = end;
    this.#more.hidden = end >= this.#found.length;
  }
}

let boxes = 0;

/** A box to search with; found is called with its words. */
export function searchBox(label, found) {
  const id = `search-${++boxes}`;
  const box = el("input", { id, type: "search", autocomplete: "off", spellcheck: "false", maxlength: "100" });
  box.addEventListener("input", () => found(box.value));
  box.addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault(); // in a form Enter means the next field
    event.stopPropagation();
  });
  return el("p", { class: "search" }, el("label", { for: id }, label), box);
}
