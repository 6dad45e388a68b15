// The data sheets and other things that the site itself offers: the build has laid them on the shelf's page. Each is kept
// on this device only after the person has seen what that adds or changes.
import { byId, slot } from "./dom.js";
import { button } from "./shelf-ask.js";
import { plainText, searchBox } from "./shelf-finder.js";
import { ImportPreview } from "./shelf-import.js";
import { say } from "./words.js";

const many = 8; // a list as long as this is searched

/** Has the list offered keep its items; fields are those of each kind. */
export function offerSiteSheets(fields, core) {
  const section = byId("site-sheets"), place = byId("shelf-import");
  if (!section) return;
  const lines = [...section.querySelectorAll(".offered")];
  const itemOf = (line) => ({ id: line.dataset.id, kind: line.dataset.is, name: line.querySelector("a").textContent, form: line.dataset.form });
  const keep = async (items, back) => {
    const words = { title: say("What this would change on your device"), away: say("Keep nothing") };
    const preview = new ImportPreview(fields, core, () => {
      place.replaceChildren();
      back.focus();
    }, words);
    place.replaceChildren(preview.element);
    await preview.show(items);
  };
  for (const line of lines) {
    const one = button(say("Keep"), () => keep([itemOf(line)], one));
    one.setAttribute("aria-label", say("Keep {name} on this device", { name: itemOf(line).name }));
    line.append(one);
  }
  const shown = () => lines.filter((line) => !line.hidden);
  const all = button(say("Keep all of these"), () => keep(shown().map(itemOf), all));
  const search = (words) => {
    const wanted = plainText(words).split(/\s+/).filter(Boolean);
    for (const line of lines) line.hidden = !wanted.every((w) => plainText(line.textContent).includes(w));
  };
  slot(section, "tools").append(...(lines.length >= many ? [searchBox(say("Search these"), search)] : []), all);
}
