// Links that hold the whole form: making one, handing it on, and seeing whether one arrived whole.
import { pageKey, shareable, withForm } from "./address.js";
import { notify } from "./notices.js";
import { count, longest, write } from "./state.js";
import { say } from "./words.js";

/** The link that holds a form. Where the page is a file of this device alone, it is the part of its address that any copy
 * reads. Of a link that was cut off or altered on its way, one of the two counts is gone or the number is not right. */
export function linkTo(form) {
  const entries = `${count}=${form.size}`;
  const link = withForm(form.size > 0 ? `${entries}&${write(form)}&${entries}` : "");
  return shareable ? link : "#" + link.split("#").slice(1);
}

/** Whether all of a link's text can be read: its keys are known here, and as many as it says. */
export function whole(text, form, known) {
  if (text.length > longest) return false;
  const pairs = new URLSearchParams(text);
  const counts = pairs.getAll(count);
  const right = counts.length === 0 || (counts.length === 2 && counts.every((n) => n === String(form.size)));
  return right && [...pairs.keys()].every((key) => key === "" || key === count || key === pageKey || known(key));
}

/** Has a button hand on the form as it stands; an embedded page has none. */
export function offerSharing(button, form) {
  button?.addEventListener("click", async () => {
    try {
      const { openSheet } = await import("./share-sheet.js");
      openSheet(linkTo(form()));
    } catch {
      notify(say("Sharing cannot be loaded now. The address of this page is the link: it holds the whole form."));
    }
  });
}
