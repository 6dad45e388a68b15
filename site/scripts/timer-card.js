// One timer on its page: how things stand, and what can be changed about it.
import { go } from "./address.js";
import { last, timeOfDay } from "./clock.js";
import { byId, copy, fill, slot } from "./dom.js";
import { notify } from "./notices.js";
import { store } from "./state.js";
import { beganAgo, follows, moveTo, working } from "./timer-sheet.js";
import { alter, drop, keep, moved } from "./timer-store.js";
import { called, kindName, left, markName, nextMark, standing } from "./timer-words.js";
import { levelWord, say } from "./words.js";

const minute = 60000;

export class Card {
  root = copy("part-timer");
  #t;
  #asks; // what the open form asks about

  constructor() {
    this.root.addEventListener("click", (event) => this.#act(event));
    this.root.querySelector(".timer-edit").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#take();
    });
  }

  show(t, now) {
    this.#t = t;
    const { level, text } = standing(t, now), over = !nextMark(t, now);
    this.root.className = `timer ${level}${over ? " over" : ""}`;
    fill(this.root, { name: t.name, rename: t.name ? say("Rename") : say("Name it"), kind: kindName(t.kind), word: levelWord(level), text, note: this.#note(t), remove: over ? say("Put away") : say("Remove") });
    this.#marks(t, now);
    this.#tools(t, over);
  }

  #marks(t, now) {
    const box = this.root.querySelector(".timer-marks");
    while (box.children.length < t.marks.length) box.append(copy("part-mark"));
    const next = nextMark(t, now) ?? t.marks.at(-1);
    t.marks.forEach((m, i) => {
      const line = fill(box.children[i], { name: markName(t.kind, m.is), left: left(m, now), at: timeOfDay(m.at, now) });
      line.classList.toggle("next", m === next);
      line.classList.toggle("past", m.at <= now);
      line.classList.toggle("last", m.at > now && m.at - now <= last);
    });
  }

  #note(t) {
    const begun = timeOfDay(t.begun);
    const notes = [t.kind === "pot" ? say("Mixed at {time}", { time: begun }) : say("Began at {time}", { time: begun })];
    if (follows(t)) notes.push(say("{air} now", { air: `${t.sheet.air}\u202f${unitSymbol(t.sheet["air.unit"])}` }));
    if (t.set !== 0) notes.push(say("{n} min, set by you", { n: (t.set > 0 ? "+" : "−") + Math.abs(t.set) }));
    return notes.join(" · ");
  }

  #tools(t, over) {
    const offered = {
      less: !over && ["flash", "bake"].includes(t.kind), more: ["flash", "bake"].includes(t.kind),
      warmth: t.kind === "pot" && !over, began: !over && !(t.stays?.length > 0), working: t.kind === "pot" && follows(t), remove: true,
    };
    for (const [doing, can] of Object.entries(offered)) this.root.querySelector(`.timer-tools [data-do="${doing}"]`).hidden = !can;
  }

  #act(event) {
    const doing = event.target.closest("[data-do]")?.dataset.do;
    if (doing === "less") this.#set(-1);
    if (doing === "more") this.#set(1);
    if (doing === "working") {
      event.preventDefault();
      go(working(this.#t)); // as it stands at this moment
    }
    if (["name", "warmth", "began"].includes(doing)) this.#ask(doing);
    if (doing === "cancel") this.#close();
    if (doing === "remove") this.#remove();
  }

  #set(n) {
    alter(this.#t.id, (t) => ({ ...moved(t, n * minute), set: t.set + n }));
  }

  async #remove() {
    const t = this.#t;
    await drop(t);
    notify(say("{what} removed.", { what: called(t) }), { [say("Undo")]: () => keep(t), [say("Close")]: undefined });
    byId("main").focus();
  }

  // Only one card asks at a time, so that its fields' ids stand once.
  #ask(about) {
    document.querySelectorAll(".timer-edit").forEach((form) => { form.hidden = true; form.replaceChildren(); });
    const form = this.root.querySelector(".timer-edit");
    this.#asks = about;
    form.replaceChildren(copy("part-" + about));
    form.hidden = false;
    for (const unit of form.querySelectorAll("select.unit")) unit.value = store.get("units") === "us" ? unit.dataset.us : unit.dataset.own;
    if (about === "name") form.querySelector("input").value = this.#t.name;
    if (about === "warmth" && follows(this.#t)) {
      const unit = this.#t.sheet["air.unit"];
      if (unit) form.querySelector('select[name="now.air.unit"]').value = unit;
      for (const key of ["pot_life", "pot_life_at", "stood_at"]) form.querySelector(`[data-field="now.${key}"]`)?.remove();
    }
    form.querySelector("input").focus();
  }

  #close() {
    const form = this.root.querySelector(".timer-edit");
    form.hidden = true;
    form.replaceChildren();
    this.root.querySelector(`[data-do="${this.#asks}"]`).focus();
  }

  async #take() {
    const form = this.root.querySelector(".timer-edit");
    const typed = {};
    for (const box of form.querySelectorAll("input[name]")) {
      const key = box.name.slice("now.".length), unit = form.querySelector(`select[name="${box.name}.unit"]`);
      typed[key] = box.value.trim();
      if (unit && unit.value !== unit.dataset.own) typed[key + ".unit"] = unit.value;
    }
    let wrong;
    try {
      wrong = await this.#change(typed);
    } catch (error) {
      wrong = error.message;
    }
    const line = slot(form, "wrong");
    if (wrong && this.#asks === "warmth") wrong += " " + say("Until then the time shown is for the temperature before. If the mix is warmer now, use it up sooner.");
    line.hidden = !wrong;
    line.textContent = wrong;
    if (!wrong) this.#close();
  }

  // Returns what is wrong with what was typed, blank for nothing.
  async #change(typed) {
    if (this.#asks === "began") return beganAgo(this.#t, typed);
    if (this.#asks === "warmth") return moveTo(this.#withSheet(typed), warmth(typed));
    await alter(this.#t.id, (t) => ({ ...t, name: typed.name }));
    return "";
  }

  // A timer without its data sheet takes over what has just been asked.
  #withSheet(typed) {
    if (follows(this.#t)) return this.#t;
    const { stood_at, "stood_at.unit": unit, air, "air.unit": ignored, ...sheet } = typed;
    return { ...this.#t, stays: this.#t.stays ?? [], sheet: { ...sheet, air: stood_at, ...(unit ? { "air.unit": unit } : {}) } };
  }
}

const warmth = (typed) => ({ air: typed.air, ...(typed["air.unit"] ? { "air.unit": typed["air.unit"] } : {}) });

// The symbol is the one that the form offers.
const unitSymbol = (id) => {
  const units = byId("part-warmth").content.querySelector('select[name="now.air.unit"]');
  return units.querySelector(`option[value="${id ?? units.dataset.own}"]`)?.textContent ?? "";
};
