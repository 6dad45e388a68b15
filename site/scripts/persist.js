// Whether what the person keeps is safe in this browser, said in the footer, and asked for when the first thing is kept.
import { byId } from "./dom.js";
import { store } from "./state.js";
import { say } from "./words.js";

const stays = async () => Boolean(await navigator.storage?.persisted?.().catch(() => false));

async function answer() {
  if (!store.set("kept", "yes")) return say("This browser keeps nothing: what you type is gone with the page. Share or copy the link to save it.");
  if (await stays()) return say("This browser keeps your forms and records until you remove them.");
  return say("This browser may clear your forms and records when it runs short of room.");
}

let offline = "";

/** Says in the footer what stays on the device; works is what it says of the site itself. */
export async function sayKept(works) {
  offline = works;
  byId("kept").textContent = [say("Nothing you type leaves this device."), offline, await answer()].join(" ");
}

// Some browsers ask the person, so this waits until there is something worth keeping.
addEventListener("kept", async () => {
  if (!navigator.storage?.persist || (await stays())) return;
  await navigator.storage.persist().catch(() => false);
  sayKept(offline);
});
