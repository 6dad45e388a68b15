// How timers call: the person's choices, and what the device answered.
import { byId } from "./dom.js";
import { store } from "./state.js";
import { onAnswer, wish, wished } from "./timer-awake.js";
import { approaching, askNotices, notices, ringing, voice, wake } from "./timer-sound.js";
import { say } from "./words.js";

export function offerWays() {
  for (const radio of document.querySelectorAll('#voices input')) {
    radio.checked = radio.value === voice.get();
    radio.addEventListener("change", () => voice.set(radio.value));
  }
  byId("try-near").addEventListener("click", () => { wake(); approaching(); });
  byId("try-now").addEventListener("click", () => { wake(); ringing(); });

  byId("screen").checked = wished();
  byId("screen").addEventListener("change", ({ target }) => wish(target.checked));
  onAnswer((answer) => {
    byId("screen-answer").textContent = {
      on: say("The screen stays on."),
      refused: say("This device does not let the page keep the screen on. Set its screen to stay on longer."),
      off: say("The screen may go dark, and then nothing can ring."),
      none: "",
    }[answer];
  });
  offerNotices();
}

// Notifications are asked for by the person, never by the page.
function offerNotices() {
  byId("notices-line").hidden = notices() === undefined;
  const tell = () => {
    const on = notices() === "granted" && store.get("timer-notices");
    byId("ask-notices").textContent = on ? say("No more notifications") : say("Also show a notification");
    byId("notices-answer").textContent = on ? say("A notification is shown too, while a page of this site is open.")
      : notices() === "denied" ? say("This browser does not allow notifications here; its settings can.") : "";
  };
  byId("ask-notices").addEventListener("click", async () => {
    const on = store.get("timer-notices") && notices() === "granted";
    if (!on && notices() === "default") await askNotices();
    store.set("timer-notices", on ? "" : "1");
    tell();
  });
  tell();
}
