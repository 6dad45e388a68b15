// Starts a timer from an answer.
import { go } from "./address.js";
import { notify } from "./notices.js";
import { wake } from "./timer-sound.js";
import { drop, keep, kept, made } from "./timer-store.js";
import { open } from "./timer-strip.js";
import { called } from "./timer-words.js";
import { say } from "./words.js";

/** Starts a timer that a report gives; form is what was filled in for it. Returns the timer, undefined when it could not
 * be kept. */
export async function start(timer, form) {
  wake();
  const t = await keep(made(timer, form));
  if (!t) return undefined;
  await open();
  const what = called(t);
  const text = (await kept())
    ? say("{what}: the timer runs from now. It can ring only while a page of this site is open and the screen is on.", { what })
    : say("{what}: the timer runs from now, on this page alone: this browser keeps nothing.", { what });
  notify(text, {
    [say("Name it, or say when it began")]: () => go("timers.html"),
    [say("Undo")]: () => drop(t),
    [say("Close")]: undefined,
  });
  return t;
}
