// Takes the place of scripts/timer-button.js in an embedded page, which keeps no timers.
import { el } from "../scripts/dom.js";

export const timerButton = () => el("span", { class: "time", hidden: "" });

export const offerTimers = () => {};
