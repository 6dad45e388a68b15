// The shelf's page: what is kept, by kind, with search; and the shelf as a file, out and in.
import { Core } from "./core.js";
import { watch } from "./db.js";
import { byId, el } from "./dom.js";
import { notify } from "./notices.js";
import { button } from "./shelf-ask.js";
import { exportItems, readItems, Refused } from "./shelf-file.js";
import { fieldsOf } from "./shelf-fits.js";
import { searchBox } from "./shelf-finder.js";
import { ImportPreview } from "./shelf-import.js";
import { Shelf } from "./shelf-list.js";
import { offerSiteSheets } from "./shelf-site.js";
import { itemsOf, kinds, tellRefused } from "./shelf-store.js";
import { say } from "./words.js";

/** Opens the page. */
export async function open(main) {
  const core = new Core(main.dataset.core);
  const shelves = [...main.querySelectorAll("[data-kind]")].map((section) => new Shelf(section, core));
  let words = "";
  const count = el("p", { class: "soft", role: "status" });
  const search = (typed) => {
    words = typed;
    for (const shelf of shelves) shelf.show(words);
    tell();
  };
  const tell = () => {
    const n = shelves.reduce((sum, shelf) => sum + shelf.count, 0);
    count.textContent = words.trim() === "" ? "" : n === 0 ? say("Nothing on the shelf has these words.") : say("Found: {n}", { n });
  };
  byId("shelf-search").append(searchBox(say("Search the shelf"), search), count);

  const everything = async () => (await Promise.all(kinds.map((kind) => itemsOf(kind)))).flat();
  const save = async () => {
    const items = await everything();
    if (items.length === 0) notify(say("There is nothing on the shelf to export yet."));
    else exportItems(items);
  };
  byId("shelf-files").append(button(say("Export all"), save, "plain"), importer(main, core));

  let reading = Promise.resolve();
  const refresh = () => (reading = reading.catch(() => {}).then(async () => {
    for (const shelf of shelves) await shelf.load(words);
    tell();
  }));
  watch((kind) => kind === "profile" && refresh());
  await refresh();
  offerSiteSheets(formsOf(main), core);
  main.dataset.ready = "yes";
  tellRefused(save);
}

// A file is chosen, looked at, and only then written.
function importer(main, core) {
  const file = el("input", { type: "file", accept: ".json,application/json", id: "shelf-file", class: "unseen" });
  const place = byId("shelf-import");
  const away = () => {
    place.replaceChildren();
    file.focus();
  };
  file.addEventListener("change", async () => {
    const [chosen] = file.files;
    file.value = ""; // the same file can be chosen again
    if (!chosen) return;
    place.replaceChildren();
    try {
      const items = await readItems(chosen);
      if (items.length === 0) throw new Refused(say("This file is an empty shelf. There is nothing to take from it."));
      const preview = new ImportPreview(formsOf(main), core, away);
      place.replaceChildren(preview.element);
      await preview.show(items);
    } catch (error) {
      place.replaceChildren();
      notify(error instanceof Refused ? error.message : say("This file could not be looked at. Nothing was taken from it."));
    }
  });
  return el("label", { class: "plain file", for: "shelf-file" }, file, el("span", {}, say("Import a file")));
}

// The fields of each kind's form, which the build has laid beside the lists.
function formsOf(main) {
  const forms = new Map();
  return (kind) => {
    if (!forms.has(kind)) forms.set(kind, fieldsOf(main.querySelector(`[data-kind="${kind}"] template`).content));
    return forms.get(kind);
  };
}
