// Asking the person which changes they want.
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { oldAndNew } from "./shelf-fits.js";
import { say } from "./words.js";

/** A button that does something, and tells where that fails. */
export function button(label, run, look = "plain") {
  const b = el("button", { type: "button", class: look }, label);
  b.addEventListener("click", async () => {
    try {
      await run();
    } catch (error) {
      notify(error.message);
    }
  });
  return b;
}

/** Shows changes, each with a box to tick. change gets the ticked ones; leave is called where the person wants none. */
export function choosing(says, changes, change, leave) {
  const boxes = changes.map(() => el("input", { type: "checkbox" }));
  for (const box of boxes) box.checked = true;
  const lines = changes.map((c, i) => el("li", {}, el("label", {}, boxes[i], el("span", {}, el("b", {}, c.field.dataset.label), " ", oldAndNew(c.old, c.new)))));
  return el("div", {}, el("p", {}, says), el("ul", { class: "changes" }, ...lines),
    el("p", {}, button(say("Change the ticked ones"), () => change(changes.filter((_, i) => boxes[i].checked)), "action"), " ", button(say("Leave them"), leave)));
}

/** Has the page fill in changes. */
export function send(main, changes, says) {
  if (changes.length === 0) return;
  main.dispatchEvent(new CustomEvent("fill", { detail: { values: new Map(changes.flatMap((c) => c.values)), says } }));
}
