// The sheet that hands a form on: its link as text, copied, given to another program, as a QR code, or printed. Nothing
// is sent from here.
import { shareable } from "./address.js";
import { byId, copy, fill } from "./dom.js";
import { printCard } from "./paper.js";
import { codeOf, codePicture } from "./share-code.js";
import { levelWord, say } from "./words.js";

const sheet = byId("share-sheet"), box = byId("share-link"), said = byId("share-says");
const part = (name) => sheet.querySelector(`[data-share="${name}"]`);

const finest = 3; // pixels across a module that most phones still read off a screen; common practice, no source

let link; // that is handed on
let long; // the readable one, where the short one is handed on instead

if (!shareable) {
  byId("share-file").hidden = false;
  for (const e of sheet.querySelectorAll("[data-file]")) e.textContent = e.dataset.file;
}

const doing = {
  copy: () => hand(link),
  long: () => hand(long),
  send: send,
  print: () => {
    sheet.close();
    printCard();
  },
  close: () => sheet.close(),
};

sheet.addEventListener("click", ({ target }) => {
  if (target === sheet) sheet.close(); // beside it
  else doing[target.closest("[data-share]")?.dataset.share]?.();
});
box.addEventListener("focus", () => box.select());

/** Opens the sheet for a link. */
export async function openSheet(url) {
  link = box.value = url;
  long = undefined;
  said.textContent = "";
  part("long").hidden = true;
  part("send").hidden = !(shareable && navigator.share);
  byId("share-code").replaceChildren();
  byId("share-verdict").replaceChildren();
  sheet.showModal();
  if (!shareable) return;
  try {
    const code = await codeOf(url);
    if (link === url) show(code);
  } catch (error) {
    said.textContent = error.message;
  }
}

// Where programs may cut the link, the short one is handed on in its place.
function show({ rulings, cut, short, picture }) {
  if (cut && short) {
    long = link;
    link = box.value = short;
  }
  part("long").hidden = !long;
  byId("share-code").replaceChildren(...(picture ? [codePicture(picture)] : []));
  const ofCode = rulings.find((r) => r.level !== "wait") ?? rulings[0]; // the other is of the link's length, and never worse
  byId("share-verdict").replaceChildren(...[tooFine(picture) ?? ofCode, ...rulings.filter((r) => r !== ofCode)].map((r) => {
    const item = copy("part-ruling");
    item.classList.add(r.level);
    item.querySelector("details").remove();
    return fill(item, { word: levelWord(r.level), why: r.why, do: r.do });
  }));
}

// The core knows the code, and not how large it stands on this screen.
function tooFine(picture) {
  const across = picture && byId("share-code").querySelector("svg").getBoundingClientRect().width / picture.width;
  if (!picture || across >= finest) return undefined;
  return { level: "wait", why: say("At this size the QR code is too fine for most phones to read"), do: say("Print it, show it on a larger screen, or hand on the link above") };
}

async function hand(text) {
  try {
    await navigator.clipboard.writeText(text);
    said.textContent = shareable ? say("Link copied. Whoever opens it sees this form and its answer.") : say("Copied without an address, because this file has none that others can open. Put it behind the address of any copy, of this file or of the site.");
  } catch {
    box.value = text;
    box.focus();
    box.select();
    said.textContent = say("Copy it by hand: the link holds the whole form.");
  }
}

async function send() {
  try {
    await navigator.share({ title: document.title, url: link });
    sheet.close();
  } catch (error) {
    if (error.name !== "AbortError") await hand(link); // otherwise thought better of it
  }
}
