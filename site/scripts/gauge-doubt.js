// Asks about a reading that the core finds far off the film specified: a slip of the keys, or the wrong unit. It counts
// until it is taken out, and what was kept once is not asked about again.
import { byId, fill } from "./dom.js";
import { store } from "./state.js";
import { say } from "./words.js";

const kept = "gauge-sure";
const named = (r) => `${r.text.replaceAll(" ", "")}${r.unit}`;

export class Doubt {
  #sure = new Set(store.get(kept).split(" ").filter(Boolean));
  #open = []; // the readings asked about, each { reading, n, why }

  /** takeOut gets the place of a reading, counted from 0. */
  constructor(takeOut, changed) {
    byId("gauge-doubt").addEventListener("click", ({ target }) => {
      const doing = target.closest("[data-do]")?.dataset.do;
      if (doing === "out") takeOut(this.#open[0].n - 1);
      if (doing === "keep") this.#keep(this.#open.slice(0, 1));
      if (doing === "keep-all") this.#keep(this.#open);
      if (doing) changed();
    });
  }

  show(report, readings) {
    const rows = report.lists.find((l) => l.key === "doubtful")?.rows ?? [];
    this.#open = rows.map(([n, why]) => ({ n: Number(n.typed), why: why.text, reading: readings[Number(n.typed) - 1] }))
      .filter(({ reading }) => reading && !this.#sure.has(named(reading)));
    const box = byId("gauge-doubt"), first = this.#open[0];
    box.hidden = !first;
    box.querySelector('[data-do="keep-all"]').hidden = this.#open.length < 2;
    fill(box, { why: first ? say("Reading {n}: {why}.", first) : "", all: say("Keep all {n}", { n: this.#open.length }) });
    return new Set(this.#open.map(({ n }) => String(n)));
  }

  /** Other readings: all is asked anew. */
  forget() {
    this.#sure.clear();
    store.set(kept, "");
  }

  #keep(open) {
    for (const { reading } of open) this.#sure.add(named(reading));
    store.set(kept, [...this.#sure].join(" "));
  }
}
