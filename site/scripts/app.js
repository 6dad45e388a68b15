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

const main = document.querySelector("main[data-calculator]");
if (main) {
  const { Page } = await import("./page.js");
  new Page(main).open();
}
keepOffline();
