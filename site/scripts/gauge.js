// The gauge bench: readings keyed in with one hand, judged by the core as they come in. The form is the one of the page
// that tells of all rules, and is kept with it.
import { formText, withForm } from "./address.js";
import { Card } from "./answer.js";
import { Core } from "./core.js";
import { byId } from "./dom.js";
import { Form } from "./form.js";
import { Doubt } from "./gauge-doubt.js";
import { Pad } from "./gauge-pad.js";
import { givenIn, most, readingsIn, together } from "./gauge-readings.js";
import { markReadings, showBoard, showReadings, showWrong, specification, symbolOf } from "./gauge-shown.js";
import { notify } from "./notices.js";
import { offerSharing } from "./share.js";
import { answered, parse, write } from "./state.js";
import { TabForm } from "./tab-form.js";
import { say } from "./words.js";

const page = "gauge-readings";

export function open(main) {
  const bench = new Bench(main.dataset.core);
  new Pad(main, { add: (texts) => bench.add(texts), undo: () => bench.undo() });
  offerSharing(byId("gauge-share"), () => bench.values);
  byId("gauge-print").addEventListener("click", () => print());
  byId("gauge-clear").addEventListener("click", () => bench.clear());
  addEventListener("hashchange", () => bench.follow());
  bench.begin();
}

class Bench {
  #core;
  #card = new Card();
  #form = new Form(byId("form"), () => this.#changed());
  #unit = byId("gauge-unit");
  // Readings are keyed in the unit of the film specified, unless another is chosen for them.
  #specified = byId("form").querySelector('select.unit[data-of="dry_film"]');
  #doubt = new Doubt((i) => this.#takeOut(i), () => this.#changed());
  #kept = new TabForm(page);
  #readings = []; // { text, unit }, in order
  #asking = false;
  #again = false;
  #told = false;
  #chosen = false;

  constructor(core) {
    this.#core = new Core(core);
    this.#unit.addEventListener("change", () => {
      this.#chosen = true;
      this.#changed(); // answers are in the unit of the readings
    });
  }

  get values() {
    return together(this.#form.values, this.#readings);
  }

  begin() {
    if (!this.follow()) this.#load(parse(this.#kept.get("form")));
  }

  /** A link takes the place of what is on the bench, which can be put back. */
  follow() {
    const link = formText(), mine = this.#kept.get("form");
    if (!link.includes("=")) return false;
    this.#doubt.forget();
    this.#load(parse(link));
    history.replaceState(null, "", withForm(""));
    if (answered(parse(mine)) && mine !== write(this.values)) notify(say("These readings came from a link."), { [say("Put mine back")]: () => this.#load(parse(mine)), [say("Keep these")]: undefined });
    return true;
  }

  add(texts) {
    const room = most - this.#readings.length;
    if (texts.length > room) notify(say("The bench holds {most} readings. Start again for another area.", { most }));
    byId("gauge-given").open = false; // the verdict needs the room
    const unit = this.#unit.value === this.#unit.dataset.own ? "" : this.#unit.value;
    this.#readings.push(...texts.slice(0, room).map((text) => ({ text, unit })));
    if (texts.length > 0) this.#changed();
  }

  undo() {
    if (this.#readings.length > 0) this.#takeOut(this.#readings.length - 1);
  }

  clear() {
    const before = this.values;
    this.#doubt.forget();
    this.#load(givenIn(before));
    notify(say("The readings are gone; what is specified stays."), { [say("Put them back")]: () => this.#load(before), [say("Close")]: undefined });
  }

  #load(values) {
    this.#readings = readingsIn(values);
    this.#form.values = givenIn(values);
    this.#form.show();
    this.#unit.value = this.#readings.at(-1)?.unit || this.#specified.value;
    byId("gauge-given").open = !this.#form.values.has("dry_film");
    this.#changed();
  }

  #takeOut(i) {
    const before = [...this.#readings];
    const [gone] = this.#readings.splice(i, 1);
    this.#changed();
    const back = () => {
      this.#readings = before;
      this.#changed();
    };
    notify(say("Reading {text} taken out.", { text: gone.text }), { [say("Put it back")]: back, [say("Close")]: undefined });
  }

  #changed() {
    if (this.#readings.length === 0 && !this.#chosen) this.#unit.value = this.#specified.value;
    if (!this.#kept.set("form", write(this.values)) && !this.#told) {
      this.#told = true;
      notify(say("This browser keeps nothing. Share the readings to save them."));
    }
    showReadings(this.#readings, (i) => this.#takeOut(i));
    byId("gauge-paper").textContent = [specification(this.#specified), ...this.#readings.map((r) => r.text + "\u202f" + symbolOf(r))].filter(Boolean).join("; ");
    this.#ask().catch((error) => notify(error.message));
  }

  // One question at a time, and always the latest.
  async #ask() {
    this.#again = this.#asking;
    if (this.#asking) return;
    this.#asking = true;
    try {
      do {
        this.#again = false;
        this.#show(await this.#core.report(page, write(new Map([["units.film", this.#unit.value], ...this.values]))));
      } while (this.#again);
    } finally {
      this.#asking = false;
    }
  }

  #show(report) {
    if (this.#again) return; // the answer to other readings
    markReadings(showWrong(report, this.#readings), "bad");
    markReadings(this.#doubt.show(report, this.#readings), "doubted");
    showBoard(report, this.#readings);
    this.#card.show(report);
    byId("gauge-spec").textContent = specification(this.#specified);
  }
}
