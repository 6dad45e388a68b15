// What goes on paper: the card, with a QR code that leads back to the form, and labels for cups. The sheet itself is
// laid out by paper-card.js, which is fetched once there is an answer, because a browser waits for nothing when it prints.
import { shareable } from "./address.js";
import { byId, el } from "./dom.js";
import { linkTo } from "./share.js";
import { say } from "./words.js";

let answer; // the page's last one
let layer; // paper-card.js
let drawn; // the QR code that was drawn last: { link, picture }

/** Part of every calculator's page: has the browser print the sheet instead of the page. */
export function offerPaper(main) {
  main.addEventListener("answer", ({ detail }) => {
    answer = detail;
    layers().then((module) => { layer = module; });
    offerLabels();
  });
  addEventListener("beforeprint", layOut);
  matchMedia("print").addEventListener("change", ({ matches }) => matches && layOut());
  // The keys for printing leave no time to draw the code, so they are taken here.
  addEventListener("keydown", (event) => {
    if (event.key.toLowerCase() !== "p" || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
    event.preventDefault();
    printCard();
  });
}

const layers = () => (answer?.id === "day" ? import("./day-paper.js") : import("./paper-card.js"));

/** Prints the sheet, with the code where it can be had. */
export async function printCard() {
  layer ??= await layers();
  const link = answer && linkTo(answer.form);
  if (link && shareable && drawn?.link !== link) {
    const { codeOf } = await import("./share-code.js");
    const picture = await codeOf(link).then((code) => code.readable && code.picture, () => undefined);
    drawn = { link, picture };
  }
  print();
}

function layOut() {
  if (!answer || document.documentElement.dataset.paper) return;
  if (!layer) return void layers().then((module) => { layer = module; layOut(); });
  layer.lay(answer, drawn?.link === linkTo(answer.form) ? drawn.picture : undefined);
}

// What is done with a card stands at its top, where the answer tells what to pour into a cup: a job's card is long.
function offerLabels() {
  const tools = byId("paper-tools");
  const pours = answer.report.lists.some((l) => l.key === "labels" || l.key === "component");
  tools.hidden = !pours;
  if (!pours || tools.firstChild) return;
  const print = el("button", { type: "button", class: "plain" }, say("Print"));
  const labels = el("button", { type: "button", class: "plain", id: "cup-labels" }, say("Labels"));
  const share = el("button", { type: "button", class: "plain" }, say("Share"));
  print.addEventListener("click", printCard);
  share.addEventListener("click", () => byId("share").click());
  labels.addEventListener("click", () => import("./paper-labels.js").then((module) => module.openLabels(answer.report)));
  tools.append(print, labels, share, el("a", { class: "plain", href: "timers.html" }, say("Timers")));
}
