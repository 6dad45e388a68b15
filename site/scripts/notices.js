// One-line notices at the top of the page. Each stays until it is used or put away; the newest is shown, and those before
// it wait behind a button, so that a phone keeps its height.
import { byId, el } from "./dom.js";
import { say } from "./words.js";

const more = el("button", { type: "button", class: "plain", "aria-expanded": "false" });
let box;

/** Shows a notice with its buttons: what each says and does. */
export function notify(text, actions = { [say("Close")]: undefined }) {
  mind();
  for (const old of box.children) if (old.firstChild.textContent === text) old.remove();
  const notice = el("p", { class: "notice" }, el("span", {}, text), " ");
  for (const [label, run] of Object.entries(actions)) {
    const button = el("button", { type: "button", class: "plain" }, label);
    button.addEventListener("click", () => {
      notice.remove();
      run?.();
    });
    notice.append(button);
  }
  place(notice);
  return notice;
}

/** Puts a notice that stands ready in its place. The one that offers another language stands until it is answered:
 * whoever needs it cannot read the others. */
export function place(notice) {
  mind();
  box.insertBefore(notice, notice.lang ? null : box.querySelector(":scope > [lang]"));
}

function mind() {
  if (box) return;
  box = byId("notices");
  new MutationObserver(fold).observe(box, { childList: true });
  more.addEventListener("click", () => {
    box.classList.toggle("all");
    fold();
  });
}

function fold() {
  const n = box.children.length - 1;
  if (n < 1) {
    box.classList.remove("all");
    return more.remove();
  }
  const all = box.classList.contains("all"), text = all ? say("The last alone") : say("{n} more", { n });
  more.setAttribute("aria-expanded", String(all));
  if (more.textContent !== text) more.textContent = text;
  if (more.parentElement !== box.lastElementChild) box.lastElementChild.append(more);
}
