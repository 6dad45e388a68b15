// The card: verdict, figures, lists, pictures and cautions, in the places that the build has laid out.
import { byId, copy, el, fill, slot } from "./dom.js";
import { list } from "./lists.js";
import { notify } from "./notices.js";
import { picture } from "./picture.js";
import { timerButton } from "./timer-button.js";
import { levelWord, say } from "./words.js";
import { steps } from "./working.js";

const longWords = 14; // characters; longer words are a sentence rather than a figure

export class Card {
  #root = byId("card");
  #report;
  #whole; // asks for it with its working, where that was left out
  #spoken;
  #drawn = new Map(); // what each list and picture was drawn from

  constructor() {
    this.#root.addEventListener("toggle", ({ target }) => {
      if (target.open && target.matches(".figure, .why-steps")) this.#work(target);
    }, true);
  }

  show(report, whole = async () => report) {
    this.#report = report;
    this.#whole = whole;
    this.#verdict(report.verdict);
    const figures = new Map(report.figures.map((f) => [f.key, f]));
    const lists = new Map(report.lists.map((l) => [l.key, l]));
    for (const holder of this.#root.querySelectorAll("[data-out]")) {
      const key = holder.dataset.out;
      if (lists.has(key)) this.#list(holder, lists.get(key));
      else if (figures.has(key)) this.#figure(holder, figures.get(key));
      else if (holder.firstChild) this.#clear(holder);
      holder.hidden = !holder.firstChild;
    }
    for (const place of this.#root.querySelectorAll(".card-place")) {
      place.hidden = !place.querySelector(".out:not([hidden])");
    }
    this.#pictures(report.pictures);
    if (report.cautions.length > 0) {
      this.#once("cautions", byId("cautions"), report.cautions, () => report.cautions.map((c) => el("p", { class: "caution" }, c)));
    }
  }

  /** The figures that the short answer shows. */
  mainFigures(report) {
    const main = [...this.#root.querySelectorAll('[data-main="true"]')].map((e) => e.dataset.out);
    return main.map((key) => report.figures.find((f) => f.key === key)).filter(Boolean).slice(0, 3);
  }

  #verdict(rulings) {
    this.#once("verdict", byId("verdict"), rulings, () => rulings.map((r) => {
      const item = copy("part-ruling");
      item.classList.add(r.level);
      if (r.steps.length === 0) item.querySelector("details").remove();
      return fill(item, { word: levelWord(r.level), why: r.why, do: r.do });
    }));
    for (const open of byId("verdict").querySelectorAll(".why-steps[open]")) this.#work(open);
    clearTimeout(this.#spoken);
    this.#spoken = setTimeout(() => {
      const text = rulings.length > 0 ? `${levelWord(rulings[0].level)}. ${rulings[0].why}. ${rulings[0].do}` : "";
      if (byId("spoken").textContent !== text) byId("spoken").textContent = text;
    }, 1200);
  }

  // A figure changes in place, so that its working stays open.
  #figure(holder, f) {
    const kind = f.steps.length > 0 ? "part-figure" : "part-fact";
    if (holder.dataset.part !== kind) {
      holder.dataset.part = kind;
      holder.replaceChildren(copy(kind));
    }
    fill(holder, { label: f.label, text: f.text, unit: f.unit ? "\u202f" + f.unit : "" });
    holder.classList.toggle("wordy", f.unit_id === undefined && f.text.length > 8);
    holder.firstElementChild.classList.toggle("spoken", f.unit_id === undefined && f.text.length > longWords);
    const details = holder.querySelector("details");
    if (details?.open) this.#work(details);
    const button = holder.querySelector(":scope > .time");
    if (!f.timer) button?.remove();
    else if (!button) holder.append(timerButton(f, f.key));
  }

  #list(holder, l) {
    this.#once(l.key, holder, l, () => [list(l, holder.dataset.look, (place, row, column) => this.#put(place, (report) => report.lists.find(({ key }) => key === l.key)?.rows[row]?.[column]))]);
  }

  #clear(holder) {
    delete holder.dataset.part;
    this.#drawn.delete(holder.dataset.out);
    holder.replaceChildren();
  }

  #pictures(pictures) {
    const rest = pictures.filter((p) => {
      if (this.#root.querySelector(`[data-picture="${CSS.escape(p.key)}"]`)) return false; // its own module draws it
      const holder = this.#root.querySelector(`[data-out="${CSS.escape(p.key)}"]:not([hidden])`);
      if (!holder) return true;
      const old = holder.querySelector(".picture");
      if (old) old.replaceWith(picture(p));
      else holder.append(picture(p));
    });
    const box = byId("pictures");
    box.hidden = rest.length === 0;
    this.#once("pictures", box, rest, () => rest.map(picture));
  }

  #work(details) {
    const key = details.closest("[data-out]")?.dataset.out, n = [...byId("verdict").children].indexOf(details.closest(".ruling"));
    this.#put(slot(details, "steps"), (report) => (key ? report.figures.find((f) => f.key === key) : report.verdict[n]));
  }

  // Puts the working of what pick finds in the answer into its place. What is asked for later comes a moment later.
  async #put(place, pick) {
    let report = this.#report;
    if (report.steps.length === 0) {
      report = await this.#whole().catch((error) => notify(error.message));
      if (!report || !place.isConnected) return;
    }
    place.replaceChildren(...steps(report, pick(report)?.steps ?? []));
  }

  // Draws again only what has changed, and gives the focus back.
  #once(name, holder, from, draw) {
    const key = JSON.stringify(from);
    const opened = [...holder.querySelectorAll('[aria-expanded="true"]')].map((b) => b.dataset.cell);
    // Rounded figures may stay while the working under an open one has changed.
    if (this.#drawn.get(name) === key && opened.length === 0) return;
    this.#drawn.set(name, key);
    const focused = holder.contains(document.activeElement) ? document.activeElement.dataset.cell : undefined;
    holder.replaceChildren(...draw());
    for (const cell of opened) holder.querySelector(`[data-cell="${cell}"]`)?.click();
    if (focused) holder.querySelector(`[data-cell="${focused}"]`)?.focus();
  }
}
