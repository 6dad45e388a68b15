// One-line notices at the top of the page. Each stays until it is used or put away.
import { byId, el } from "./dom.js";
import { say } from "./words.js";

/** Shows a notice with its buttons: what each says and does. */
export function notify(text, actions = { [say("Close")]: undefined }) {
  const box = byId("notices");
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
  box.append(notice);
  return notice;
}
