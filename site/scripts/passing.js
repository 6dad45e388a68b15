// A page that was opened to show the working of a timer, not to be filled in. It is known by the form in its address, so
// that it stands through a reload and never reaches a link that is handed on.
import { dropQuery, formText, query } from "./address.js";
import { parse, tab, write } from "./state.js";

const name = (page) => "working:" + page;

/** The timer whose working a page shows, blank for a form of the person's own. */
export function workingOf(page) {
  const asked = query().get("timer") ?? "";
  if (asked) {
    dropQuery();
    stillWorking(page, asked, write(parse(formText())));
    return asked;
  }
  const [id, text] = tab.get(name(page)).split(/ (.*)/s);
  if (id && text === write(parse(formText()))) return id;
  tab.set(name(page), "");
  return "";
}

/** The same working, its form changed. */
export const stillWorking = (page, id, text) => tab.set(name(page), `${id} ${text}`);
