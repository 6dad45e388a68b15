// Makes a page of the site one for a frame: with its title, and with what is locked and hidden.
import { covers, options } from "./address.js";
import { el } from "../scripts/dom.js";
import { say } from "../scripts/words.js";

const everywhere = (root, selector) => [...root.querySelectorAll(selector), ...[...root.querySelectorAll("template")].flatMap((t) => everywhere(t.content, selector))];

// Of a row's template the key is "part.0.length".
const keyOf = (field) => field.dataset.field;

function lock(field) {
  field.classList.add("locked");
  for (const c of field.querySelectorAll("input, select")) {
    if (c.matches('input[type="text"]')) c.readOnly = true;
    else c.disabled = true;
  }
}

/** The fields that a link can lock or hide: what each is called and its key there. */
export const fieldsOf = (main) => everywhere(main, "#form [data-field]").concat(everywhere(main, ".row-edit").flatMap((t) => [...t.content.querySelectorAll("[data-field]")]))
  .filter((f) => !f.closest(".row"))
  .map((f) => ({ key: keyOf(f).replace(".0.", "."), label: f.dataset.label }));

/** Dresses the page. again is what its last button does. */
export function dress(main, again) {
  if (options.title) main.querySelector("h1").textContent = options.title;
  for (const field of everywhere(main, "[data-field]")) {
    if (covers(options.lock, keyOf(field))) lock(field);
    if (covers(options.hide, keyOf(field))) field.classList.add("withheld");
  }
  // Rows come and go only where no column of theirs is locked: a new one could not be filled in.
  for (const table of main.querySelectorAll("[data-table]")) {
    table.classList.toggle("rows-locked", [...options.lock].some((key) => key.split(".")[0] === table.dataset.table));
  }
  for (const place of main.querySelectorAll(".place")) {
    const fields = [...place.querySelectorAll(".fields > [data-field]")];
    if (fields.length > 0 && fields.every((f) => f.matches(".withheld"))) place.classList.add("withheld");
  }
  const button = el("button", { type: "button", class: "plain" }, say("Start again"));
  button.addEventListener("click", again);
  main.querySelector("#empty").replaceWith(button);
}
