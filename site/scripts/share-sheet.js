// The sheet that hands a form on: its link as text, copied, given to another program, as a QR code, or printed. Nothing
// is sent from here.
import { shareable } from "./address.js";
import { byId, copy, fill } from "./dom.js";
import { printCard } from "./paper.js";
import { codeOf, codePicture } from "./share-code.js";
import { levelWord, say } from "./words.js";

const sheet = byId("share-sheet"), box = byId("share-link"), said = byId("share-says");
const part = (name) => sheet.querySelector(`[data-share="${name}"]`);

let link, short;

const doing = {
  copy: () => hand(link),
  short: () => hand(short),
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
  link = url;
  short = undefined;
  box.value = url;
  said.textContent = "";
  part("short").hidden = true;
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

function show({ rulings, short: shorter, picture }) {
  short = shorter;
  part("short").hidden = !rulings.some((r) => r.level !== "go") || !short;
  byId("share-code").replaceChildren(...(picture ? [codePicture(picture)] : []));
  byId("share-verdict").replaceChildren(...rulings.map((r) => {
    const item = copy("part-ruling");
    item.classList.add(r.level);
    item.querySelector("details").remove();
    return fill(item, { word: levelWord(r.level), why: r.why, do: r.do });
  }));
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
