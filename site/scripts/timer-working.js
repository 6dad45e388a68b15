// A calculator's page that shows the working of a timer says so, and leads back.
import { go } from "./address.js";
import { notify } from "./notices.js";
import { timers } from "./timer-store.js";
import { called } from "./timer-words.js";
import { say } from "./words.js";

/** Says which timer's working the page shows. */
export async function sayWhose(id) {
  const t = (await timers().catch(() => [])).find((x) => x.id === id);
  const text = t ? say("This is the working of your timer {what}, at the moment you asked for it. Your own numbers on this page are kept apart.", { what: called(t) })
    : say("This is the working of a timer that you have put away. Your own numbers on this page are kept apart.");
  notify(text, { [say("Back to the timers")]: () => go("timers.html"), [say("Close")]: undefined });
}
