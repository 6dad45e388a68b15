// Links that hold the whole form: making one, handing it on, and seeing whether one arrived whole.
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { count, write } from "./state.js";

// Of a link that was cut off or altered on its way, one of the two counts is gone or the number is not right.
function linkTo(form) {
  const entries = `${count}=${form.size}`;
  return location.href.split("#")[0] + (form.size > 0 ? `#${entries}&${write(form)}&${entries}` : "");
}

/** Whether all of a link's text can be read: its keys are known here, and as many as it says. */
export function whole(text, form, known) {
  const pairs = new URLSearchParams(text);
  const counts = pairs.getAll(count);
  const right = counts.length === 0 || (counts.length === 2 && counts.every((n) => n === String(form.size)));
  return right && [...pairs.keys()].every((key) => key === "" || key === count || known(key));
}

/** Has a button hand on the form as it stands. */
export function offerSharing(button, form) {
  button.addEventListener("click", async () => {
    const url = linkTo(form());
    if (navigator.share) {
      try {
        await navigator.share({ title: document.title, url });
        return;
      } catch (error) {
        if (error.name === "AbortError") return; // thought better of it
      }
    }
    try {
      await navigator.clipboard.writeText(url);
      notify("Link copied. Whoever opens it sees this form and its answer.");
    } catch {
      byHand(url);
    }
  });
}

function byHand(url) {
  const box = el("input", { class: "link", type: "text", readonly: "", value: url, "aria-label": "Link to this form" });
  notify("Copy it by hand: the link holds the whole form.").append(box);
  box.addEventListener("focus", () => box.select());
  box.focus();
}
