// The bar at the bottom: the short answer, or what is still needed. It stays above the keypad.
import { byId, copy, el, fill, show, slot } from "./dom.js";
import { levelWord, say } from "./words.js";

const longLabels = 40; // characters; longer labels leave room for two figures
const longWords = 14; // characters; longer words may take two lines

export class Bar {
  #root = byId("bar");
  #answer = this.#root.querySelector(".bar-answer");
  #needed = [this.#root.querySelector(".bar-needed"), byId("needed")]; // in the bar, and at the head of the card
  #next;

  constructor(label, jump) {
    this.label = label;
    this.#answer.addEventListener("click", () => {
      show(byId("card"));
      byId("card").focus({ preventScroll: true });
    });
    for (const button of this.#needed) button.addEventListener("click", () => jump(this.#next));
    keepAboveKeypad(this.#root);
  }

  show(report, figures) {
    const verdict = report.verdict[0];
    this.#answer.hidden = !verdict && figures.length === 0;
    this.#answer.className = "bar-answer " + (verdict?.level ?? "");
    this.#verdict(verdict);
    const long = figures.map((f) => f.label).join("").length > longLabels;
    this.#answer.querySelector(".bar-figures").replaceChildren(...figures.slice(0, long ? 2 : 3).map((f) =>
      el("span", { class: f.text.length > longWords ? "bar-figure wordy" : "bar-figure" }, el("span", { class: "bar-label" }, f.label), " ", el("b", {}, f.text, f.unit ? el("span", { class: "unit-text" }, "\u202f" + f.unit) : ""))));
    this.#need(report.problems.filter((p) => p.field));
  }

  #verdict(verdict) {
    const holder = this.#answer.querySelector(".bar-verdict");
    holder.hidden = !verdict;
    if (!verdict) return;
    const ruling = fill(copy("part-ruling"), { why: verdict.why });
    ruling.classList.add(verdict.level);
    const word = slot(ruling, "word");
    word.textContent = levelWord(verdict.level);
    holder.replaceChildren(ruling.querySelector(".shape"), word, " ", slot(ruling, "why"));
  }

  #need(problems) {
    const wrong = problems.filter((p) => p.code !== "missing");
    const missing = problems.filter((p) => p.code === "missing");
    const group = wrong.length > 0 ? wrong : missing;
    const says = wrong.length > 0 ? say("To put right: {n}", { n: wrong.length }) : say("Still needed: {n}", { n: missing.length });
    this.#next = group[0]?.field;
    for (const button of this.#needed) {
      button.hidden = group.length === 0;
      if (group.length > 0) button.replaceChildren(el("span", {}, says), " ", el("span", { class: "next" }, say("next: {field}", { field: this.label(this.#next) })));
    }
  }
}

// Browsers that lay the keypad over the page instead of shrinking it tell so in visualViewport. A rule in a style
// sheet moves the bar, because the page allows no style attributes.
function keepAboveKeypad(bar) {
  const view = globalThis.visualViewport;
  if (!view) return;
  const [sheet] = document.styleSheets; // the site has one
  if (!sheet) return;
  const rule = sheet.cssRules[sheet.insertRule(":root{--keypad:0px}", sheet.cssRules.length)];
  const measure = () => {
    const under = view.scale > 1.05 ? 0 : Math.max(0, document.documentElement.clientHeight - view.height - view.offsetTop);
    rule.style.setProperty("--keypad", `${Math.round(under)}px`);
    bar.classList.toggle("lifted", under > 0);
  };
  view.addEventListener("resize", measure);
  view.addEventListener("scroll", measure);
  measure();
}
