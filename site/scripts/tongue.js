// The page's language, and what the device's region adds to it: the decimal mark, and units to begin with.
import { formText } from "./address.js";
import { byId } from "./dom.js";
import { place } from "./notices.js";
import { store } from "./state.js";

const { lang } = document.documentElement;
const device = navigator.languages.flatMap((tag) => {
  try {
    return [new Intl.Locale(tag)];
  } catch {
    return []; // some systems name one that is none, such as "en-US@posix"
  }
});
const region = device.find((l) => l.region)?.region;
const own = device.find((l) => l.language === lang && l.region);

// The page's language as the device has it. A device of another language says nothing of how this one writes numbers: the
// texts of the page have their own mark, and answers must have the same.
const locale = own ?? lang;

/** What stands before decimals here. It is only looked up: the core writes the numbers. */
export const decimalMark = new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === "decimal").value;

/** Sets the page up for the device it is on, and has its links to other languages take the form along. */
export function mindTongues() {
  if (!store.get("units") && ["US", "LR", "MM"].includes(region)) store.set("units", "us"); // until the person chooses
  for (const link of byId("tongues").querySelectorAll("a")) lead(link);
  offer();
}

// A link to this page in another language. The choice is remembered, and theme.js follows it on other pages.
function lead(link) {
  const base = link.getAttribute("href");
  link.addEventListener("click", () => {
    store.set("language", link.lang);
    const text = formText();
    const between = base === "#" ? "" : base.includes("#") ? "&" : location.search + "#";
    link.setAttribute("href", text ? base + between + text : base + (base.includes("#") ? "" : location.search));
  });
}

// On a first visit the language that the device speaks is offered where there is one; it is never forced.
function offer() {
  if (store.get("language") || device.some((l) => l.language === lang)) return;
  const wanted = device.map((l) => document.querySelector(`template[data-tongue="${l.language}"]`)).find(Boolean);
  if (!wanted) return;
  const notice = wanted.content.firstElementChild.cloneNode(true);
  lead(notice.querySelector("a"));
  notice.querySelector("button").addEventListener("click", () => {
    store.set("language", lang);
    notice.remove();
  });
  place(notice);
}
