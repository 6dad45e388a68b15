// What is missing and what is wrong: under the field, at the top of the form, and counted by place.
import { byId, copy, el, show } from "./dom.js";
import { say } from "./words.js";

const isMissing = (p) => p.code === "missing";

export class Problems {
  #form;
  #tables;
  #main;

  constructor(main, form, tables) {
    this.#main = main;
    this.#form = form;
    this.#tables = tables;
    main.addEventListener("click", (event) => {
      const link = event.target.closest("[data-jump]");
      if (!link) return;
      event.preventDefault();
      this.jump(link.dataset.jump);
    });
  }

  show(report) {
    const seen = report.problems.filter((p) => !isMissing(p) || this.#form.touched.has(p.field));
    this.#underFields(seen);
    this.#gather(seen.filter((p) => !isMissing(p)));
    this.#places(report.places);
    this.#card(report);
  }

  #underFields(problems) {
    const first = new Map();
    for (const p of problems) if (!first.has(p.field)) first.set(p.field, p);
    for (const field of byId("form").querySelectorAll("[data-field]")) {
      const p = first.get(field.dataset.field);
      const note = byId("w-" + field.dataset.field);
      note.hidden = !p;
      const text = p ? sentence(p) : "";
      if (note.textContent !== text) note.textContent = text;
      if (field.dataset.table) continue;
      for (const c of field.querySelectorAll("input, select:not(.unit)")) {
        if (p) c.setAttribute("aria-invalid", "true");
        else c.removeAttribute("aria-invalid");
      }
    }
  }

  #gather(problems) {
    const box = byId("gathered");
    const key = JSON.stringify(problems);
    if (box.dataset.key === key) return;
    box.dataset.key = key;
    box.hidden = problems.length === 0;
    box.querySelector("ul").replaceChildren(...problems.map((p) =>
      el("li", {}, p.field ? el("a", { href: "#f-" + p.field, "data-jump": p.field }, located(p)) : located(p))));
  }

  #places(places) {
    for (const { place, missing, wrong } of places) {
      for (const holder of this.#main.querySelectorAll(`[data-place="${CSS.escape(place)}"]`)) {
        const state = holder.querySelector('[data-slot="state"]');
        const n = missing + wrong;
        const key = `${missing}/${wrong}`;
        if (!state || state.dataset.key === key) continue;
        state.dataset.key = key;
        state.classList.toggle("bad", wrong > 0);
        if (n === 0) state.replaceChildren(copy("part-tick"));
        else state.textContent = wrong > 0 ? say("{n} wrong", { n: wrong }) : say("{n} to fill", { n: missing });
      }
    }
  }

  // The card is complete once there is an answer to all of the form.
  #card(report) {
    const state = this.#main.querySelector('.places [data-place=""] [data-slot="state"]');
    const answer = report.problems.length === 0 && report.figures.length > 0;
    if (state && answer !== Boolean(state.firstChild)) state.replaceChildren(...(answer ? [copy("part-tick")] : []));
  }

  /** Goes to a field, opening what it stands in. */
  jump(key) {
    if (!key) return;
    for (const table of this.#tables) {
      if (key === table.key || key.startsWith(table.key + ".")) {
        byId("form").querySelector(`[data-table="${CSS.escape(table.key)}"]`).closest("details.place")?.setAttribute("open", "");
        table.reveal(key);
      }
    }
    const field = this.#form.field(key);
    if (!field) return;
    for (let d = field.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
    const control = field.querySelector("input, select");
    control?.focus({ preventScroll: true });
    show(field, "center");
  }
}

// At the top of the form a problem in a table says which row it is in.
const located = (p) => (p.row ? `${p.row[0].toUpperCase()}${p.row.slice(1)}: ` : "") + sentence(p);

/** A problem as two sentences. */
export const sentence = (p) => `${p.message}.${p.fix ? ` ${p.fix}.` : ""}`;
