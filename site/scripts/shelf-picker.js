// A panel that opens in place, to choose items of the shelf.
import { el } from "./dom.js";
import { button } from "./shelf-ask.js";
import { Finder, searchBox } from "./shelf-finder.js";
import { say } from "./words.js";

const few = 8; // items among which nobody has to search

export class Picker {
  #options;
  #body = el("div");
  opener; // the button that opened it

  /** items gives what there is to choose from; describe says a word on one; choose takes those chosen. With several,
   * more than one can be ticked. */
  constructor({ items, describe, choose, several = false }) {
    this.#options = { items, describe, choose, several };
    this.element = el("div", { class: "shelf-panel", hidden: "" }, this.#body);
    this.element.addEventListener("keydown", (event) => {
      if (event.key === "Escape") this.close();
    });
  }

  toggle(opener, title = "") {
    if (!this.element.hidden && this.opener === opener) this.close();
    else this.open(opener, title);
  }

  async open(opener, title) {
    this.opener?.setAttribute("aria-expanded", "false");
    this.opener = opener;
    opener.setAttribute("aria-expanded", "true");
    const items = await this.#options.items();
    const ticked = new Set();
    const finder = new Finder((item) => this.#row(item, ticked));
    finder.take(items);
    finder.show();
    const none = el("p", { class: "soft", role: "status" });
    const tell = () => { none.textContent = finder.count === 0 ? say("Nothing on the shelf has these words.") : ""; };
    const parts = [finder.element, none];
    if (items.length === 0) parts.unshift(el("p", {}, say("There is no data sheet on the shelf yet."), " ", el("a", { href: "data-sheet.html" }, say("Fill one in"))));
    if (items.length > few) {
      parts.unshift(searchBox(say("Search the shelf"), (words) => {
        finder.show(words);
        tell();
      }));
    }
    if (title) parts.unshift(el("p", { class: "panel-title" }, title));
    if (this.#options.several && items.length > 0) parts.push(el("p", {}, this.#take(ticked, items)));
    this.#body.replaceChildren(...parts);
    this.element.hidden = false;
    this.#body.querySelector("input, button, a")?.focus();
  }

  #row(item, ticked) {
    const says = [el("b", {}, item.name), " ", el("span", { class: "soft" }, this.#options.describe(item))];
    if (!this.#options.several) {
      const pick = button("", () => this.#options.choose([item]), "pick");
      pick.append(...says);
      return el("li", {}, pick);
    }
    const box = el("input", { type: "checkbox" });
    box.checked = ticked.has(item.id);
    box.addEventListener("change", () => ticked[box.checked ? "add" : "delete"](item.id));
    return el("li", {}, el("label", { class: "pick" }, box, el("span", {}, ...says)));
  }

  #take(ticked, items) {
    return button(say("Add the ticked ones"), () => {
      const chosen = [...ticked].map((id) => items.find((item) => item.id === id)); // in the order of the ticks
      if (chosen.length > 0) this.#options.choose(chosen);
    }, "action");
  }

  /** Shows something in place of the list, to be answered first. */
  ask(element) {
    this.element.hidden = false;
    this.#body.replaceChildren(element);
    element.querySelector("input, button")?.focus();
  }

  /** Closes the panel; what it says last stays to be read. */
  close(says = "") {
    this.#body.replaceChildren(...(says ? [el("p", { role: "status" }, says)] : []));
    this.element.hidden = !says;
    this.opener?.setAttribute("aria-expanded", "false");
    if (this.opener?.isConnected) this.opener.focus({ preventScroll: true });
  }
}
