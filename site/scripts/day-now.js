// The present time in the plan. A form has no date, so whether the day is today is for the
// person to say: the line can be switched off.
import { minuteOfDay } from "./clock.js";
import { byId } from "./dom.js";
import { store } from "./state.js";

const every = 10000; // ms between looks at the clock

export class Nows {
  #switch = byId("day-present");
  #shown;

  constructor(places) {
    this.#switch.checked = store.get("day-present") !== "off";
    this.#switch.addEventListener("change", () => {
      store.set("day-present", this.#switch.checked ? "" : "off");
      this.#tell(places);
    });
    setInterval(() => this.#tell(places), every);
    for (const [event, where] of [["visibilitychange", document], ["focus", window]]) where.addEventListener(event, () => this.#tell(places));
    this.#tell(places);
  }

  #tell(places) {
    const now = this.#switch.checked ? minuteOfDay() : undefined;
    if (now === this.#shown) return;
    this.#shown = now;
    for (const place of places) place.now(now);
  }
}
