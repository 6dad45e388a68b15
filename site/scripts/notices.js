// One-line notices at the top of the page. Each stays until it is used or put away.
import { byId, el } from "./dom.js";

/** Shows a notice, with one thing to do about it if there is one. */
export function notify(text, action, run) {
  const box = byId("notices");
  for (const old of box.children) if (old.firstChild.textContent === text) old.remove();
  const notice = el("p", { class: "notice" }, el("span", {}, text));
  const button = (label, then) => {
    const b = el("button", { type: "button", class: "plain" }, label);
    b.addEventListener("click", () => {
      notice.remove();
      then?.();
    });
    return b;
  };
  notice.append(" ", action ? button(action, run) : "", button("Close"));
  box.append(notice);
  return notice;
}
