// Keeps the screen on while a timer runs, where the device lets the page.
import { store } from "./state.js";

let lock; // the browser's, while it holds
let wanted = false;
let asking = false;
let answer = "none"; // "on", "refused", "off" by choice, "none" where there is nothing to ask

const listeners = new Set();

/** Calls f with the answer now and whenever it changes. */
export function onAnswer(f) {
  listeners.add(f);
  f(answer);
}

export const wished = () => store.get("timer-screen") !== "off";

/** The person's own choice. */
export function wish(on) {
  store.set("timer-screen", on ? "" : "off");
  hold(wanted);
}

/** Asks for the screen to stay on, or lets it go. */
export async function hold(running) {
  wanted = running;
  if (!running || !wished()) {
    lock?.release().catch(() => {});
    lock = undefined;
    return tell(running ? "off" : "none");
  }
  if (!navigator.wakeLock) return tell("refused");
  if (lock || asking || document.hidden) return;
  asking = true;
  try {
    lock = await navigator.wakeLock.request("screen");
    lock.addEventListener("release", () => {
      lock = undefined; // the page was hidden, or the battery is low: asked again when it is seen
      if (!document.hidden && wanted && wished()) tell("refused");
    });
    tell("on");
  } catch {
    tell("refused");
  } finally {
    asking = false;
  }
}

function tell(says) {
  if (says === answer) return;
  answer = says;
  for (const f of listeners) f(says);
}

document.addEventListener("visibilitychange", () => !document.hidden && hold(wanted));
