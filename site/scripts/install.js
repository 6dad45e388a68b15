// Puts the site on the home screen: a button where the browser offers that, and words for phones that keep it in a menu.
import { byId } from "./dom.js";
import { say } from "./words.js";

let offer; // the browser's own, kept until the button is pressed

const installed = matchMedia("(display-mode: standalone)");

function show() {
  const line = byId("install");
  if (!line) return;
  const button = line.querySelector("button"), words = line.querySelector("span");
  // Safari on a phone or tablet says by this property that it can, and only its share menu does it.
  const byHand = navigator.standalone === false;
  button.hidden = !offer;
  words.textContent = byHand ? say("To have it on the home screen: Share, then Add to Home Screen.") : "";
  line.hidden = installed.matches || navigator.standalone === true || (!offer && !byHand);
}

addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault(); // it asks when the person wants it to
  offer = event;
  show();
});
addEventListener("appinstalled", () => {
  offer = undefined;
  show();
});

/** Has the line in the footer offer it. */
export function offerInstall() {
  byId("install")?.querySelector("button").addEventListener("click", async () => {
    const asked = offer;
    offer = undefined; // it can be asked once
    await asked?.prompt();
    show();
  });
  installed.addEventListener("change", show);
  show();
}
