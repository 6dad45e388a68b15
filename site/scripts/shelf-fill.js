// "Fill from the shelf": near the top of a form, in the rows of its tables, and what is in use by one tap.
import { get, watch } from "./db.js";
import { el } from "./dom.js";
import { choosing, send } from "./shelf-ask.js";
import { against, columnsOf, fieldsOf, fitting } from "./shelf-fits.js";
import { lineOf } from "./shelf-line.js";
import { Picker } from "./shelf-picker.js";
import { offerRows } from "./shelf-rows.js";
import { inUse, itemsOf, kindName, usable } from "./shelf-store.js";
import { parse } from "./state.js";
import { say } from "./words.js";

/** some are a few items of each kind; latest gives the page's latest answer. */
export function offerShelf(main, some, latest) {
  const own = main.dataset.calculator;
  const fields = fieldsOf(main.querySelector("#form"));
  const serves = (item) => item.kind !== own && fitting(fields, parse(item.form)).size > 0;
  const line = lineOf(main);
  let kinds = [...new Set(some.filter(serves).map((item) => item.kind))];

  const picker = new Picker({
    items: async () => (await Promise.all(kinds.map((kind) => itemsOf(kind)))).flat(),
    describe: (item) => kindName(item.kind),
    choose: ([item]) => fill(main, fields, item, latest().form, picker),
  });
  const open = el("button", { type: "button", class: "plain", "aria-expanded": "false", hidden: "" }, say("Fill from the shelf"));
  open.addEventListener("click", () => picker.toggle(open));
  picker.opener = open;
  const using = el("button", { type: "button", class: "action", hidden: "" });
  line.append(el("p", { class: "shelf-offer" }, using, " ", open), picker.element);

  const refresh = async () => {
    kinds = kinds.length > 0 ? kinds : [...new Set((await Promise.all(["data-sheet", ...usable].map((kind) => itemsOf(kind, 20)))).flat().filter(serves).map((item) => item.kind))];
    open.hidden = kinds.length === 0;
    await offerInUse(main, fields, using, kinds, latest);
  };
  main.addEventListener("answer", () => offerInUse(main, fields, using, kinds, latest));
  watch((kind) => kind === "profile" && refresh());
  refresh();
  for (const table of main.querySelectorAll("[data-table]")) {
    if (columnsOf(table).has("product")) offerRows(main, table, latest);
  }
}

// What is in use fills what is still blank, by one tap and never by itself.
async function offerInUse(main, fields, button, kinds, latest) {
  const ids = usable.filter((kind) => kinds.includes(kind)).map((kind) => [kind, inUse(kind)]).filter(([, id]) => id);
  if (ids.length === 0) {
    button.hidden = true;
    return;
  }
  const items = (await Promise.all(ids.map(([, id]) => get("profile", id)))).filter(Boolean);
  const blanks = new Map(items.map((item) => [item, against(fields, parse(item.form), latest().form).blank]).filter(([, blank]) => blank.length > 0));
  button.hidden = blanks.size === 0;
  const names = [...blanks.keys()].map((item) => item.name).join(", ");
  button.textContent = say("Fill in what is in use: {names}", { names });
  button.onclick = () => send(main, [...blanks.values()].flat(), say("Filled in from {name}.", { name: names }));
}

// Blank fields are filled at once. Where something else stands the person decides.
function fill(main, fields, item, form, picker) {
  const { blank, differs } = against(fields, parse(item.form), form);
  send(main, blank, say("Filled in from {name}.", { name: item.name }));
  if (differs.length === 0) {
    picker.close(blank.length > 0 ? "" : say("The form has all of “{name}” already.", { name: item.name }));
    return;
  }
  picker.ask(choosing(say("Here the form says something else than “{name}”:", { name: item.name }), differs, (ticked) => {
    picker.close();
    send(main, ticked, say("Changed to what {name} says.", { name: item.name }));
  }, () => picker.close()));
}
