// Wires a page together.
import { turn } from "./address.js";
import { build } from "./build.js";
import { keepOffline } from "./pwa.js";
import { store } from "./state.js";
import { mindTongues } from "./tongue.js";
import { mindTimers } from "./timer-everywhere.js";

if (self !== top) await import("./framed.js"); // and that is all
const root = document.documentElement;
// The one file is in one piece and names no build. Of a torn page theme.js tells the person.
if ((root.dataset.build ?? build) !== build) throw new Error(`the page is not of v_${build}`);
mindTongues();
for (const radio of document.querySelectorAll('#themes input')) {
  radio.checked = radio.value === store.get("theme");
  radio.addEventListener("change", () => {
    store.set("theme", radio.value);
    if (radio.value) root.dataset.theme = radio.value;
    else delete root.dataset.theme;
  });
}

// A link from a QR code is written out before anything reads it.
const folded = () => /^#\d:/.test(location.hash);
const unfold = async () => (await import("./share-code.js")).unfold();
if (folded()) await unfold();
addEventListener("hashchange", (event) => {
  if (!folded()) return;
  event.stopImmediatePropagation();
  unfold().then(() => dispatchEvent(new HashChangeEvent("hashchange")));
});

mindTimers();
const main = document.querySelector("main");
// Pages that do something of their own name their module, which exports open(main).
const pages = { shelf: () => import("./shelf.js"), timers: () => import("./timers.js"), log: () => import("./log.js"), gauge: () => import("./gauge.js"), day: () => import("./day.js"), exercise: () => import("./exercise.js"), "exercise-set": () => import("./exercise-set.js"), received: () => import("./received.js"), "put-on-page": () => import("./put-on-page.js") };
try {
  const calculates = main.dataset.calculator && !turn();
  await pages[main.dataset.module]?.().then((module) => module.open(main)); // before the first answer
  if (calculates) {
    const { Page } = await import("./page.js");
    const { attach } = await import("./extras.js");
    attach(main);
    new Page(main).open();
  }
} finally {
  keepOffline();
}
