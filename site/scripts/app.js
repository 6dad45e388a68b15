// Wires a page together.
import { keepOffline } from "./pwa.js";
import { store } from "./state.js";

const root = document.documentElement;
for (const radio of document.querySelectorAll('#themes input')) {
  radio.checked = radio.value === store.get("theme");
  radio.addEventListener("change", () => {
    store.set("theme", radio.value);
    if (radio.value) root.dataset.theme = radio.value;
    else delete root.dataset.theme;
  });
}

const main = document.querySelector("main");
if (main.dataset.calculator) {
  const { Page } = await import("./page.js");
  const { attach } = await import("./extras.js");
  attach(main);
  new Page(main).open();
}
// Other pages that do something name their module, which exports open(main).
const pages = { shelf: () => import("./shelf.js"), timers: () => import("./timers.js"), log: () => import("./log.js") };
await pages[main.dataset.module]?.().then((module) => module.open(main));
keepOffline();
