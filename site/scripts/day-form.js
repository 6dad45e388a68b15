// What makes a day quick to type: the names of jobs and products are offered where they are asked for again, a job's
// coats are one touch away, and another job like it is, too.
import { byId, el } from "./dom.js";
import { notify } from "./notices.js";
import { rowPattern } from "./rows.js";
import { store, write } from "./state.js";
import { say } from "./words.js";

const offers = { of_job: ["job", "job_name"], product: ["paint", "product"] };

/** Leaves closed, on the first visit, the places of the form that come so: they may stay as they are. */
export function closePlaces(main) {
  if (store.get("day-seen")) return;
  store.set("day-seen", "yes");
  store.set("closed:day", [...main.querySelectorAll("details.place:not([open])")].map((place) => place.id).join(" "));
}

export function easeTyping(main, changes) {
  const lists = Object.entries(offers).map(([column, from]) => {
    const list = el("datalist", { id: `day-${column}` });
    main.append(list);
    return { column, from, list };
  });
  let form = new Map();
  main.addEventListener("answer", ({ detail }) => {
    ({ form } = detail);
    for (const { from: [table, key], list } of lists) {
      const names = rowsOf(form, table).map((n) => form.get(`${table}.${n}.${key}`)).filter(Boolean);
      if (names.join("\n") !== [...list.children].map((o) => o.value).join("\n")) list.replaceChildren(...names.map((value) => el("option", { value })));
    }
  });
  main.addEventListener("fill", ({ detail: { values, own } }) => {
    const sheets = [...values].some(([key, text]) => text && /^(paint\.\d+\.pot_life|coat\.\d+\.flash)$/.test(key));
    // Last, so that it is the one that shows.
    if (sheets && !own) setTimeout(() => notify(say("Pot life and flash-off stand as the data sheet has them, for its temperature. Enter them for your booth: warm, the pot life is shorter; cold, the flash-off is longer.")));
  });
  main.addEventListener("toggle", ({ target }) => target.open && target.closest(".row") && dress(target.closest(".row")), true);

  function dress(row) {
    for (const box of row.querySelectorAll(".edit input")) {
      const [table, , column] = box.name.split(".");
      if (offers[column] && offers[column][0] !== table) box.setAttribute("list", `day-${column}`);
    }
    const tools = row.querySelector(".rowtools");
    if (!row.dataset.row.startsWith("job.") || tools.querySelector(".of-day")) return;
    const button = (says, run) => {
      const b = el("button", { type: "button", class: "plain of-day" }, says);
      b.addEventListener("click", () => run(row.dataset.row));
      return b;
    };
    tools.append(button(say("Add its coats"), addCoats), button(say("Another with the same coats"), twin));
    tools.querySelector('[data-do="copy"]').hidden = true; // a job without its coats
  }

  // A new row of coats that names the job already.
  function addCoats(row) {
    const table = main.querySelector('[data-table="coat"]');
    table.closest("details.place")?.setAttribute("open", "");
    table.querySelector(".add").click();
    const box = byId(`f-${[...table.querySelectorAll(":scope > .rows > .row")].at(-1).dataset.row}.of_job`);
    box.value = form.get(`${row}.job_name`) ?? "";
    box.dispatchEvent(new Event("input", { bubbles: true }));
    nextOf(box)?.focus();
    nextOf(box)?.scrollIntoView({ block: "center" });
  }

  const nextOf = (box) => byId(box.id.replace(/of_job$/, "product"));

  // The core gives the copy a name of its own, and copies of its coats.
  function twin(row) {
    const name = (form.get(`${row}.job_name`) ?? "").trim().toLowerCase(), only = rowsOf(form, "job").length === 1;
    const taken = [row, ...rowsOf(form, "coat").map((n) => `coat.${n}`).filter((c) => {
      const of = (form.get(`${c}.of_job`) ?? "").trim().toLowerCase();
      return of === name || (only && of === "");
    })];
    const rows = new Map([...form].filter(([key]) => taken.some((t) => key.startsWith(t + ".")) || /^(job|coat)\.[a-z_]+\.unit$/.test(key)));
    changes.tell({ day_change: "add", added: write(rows) });
  }
}

const rowsOf = (form, table) => [...new Set([...form.keys()].filter((k) => k.startsWith(table + ".")).map((k) => k.split(".")[1]).filter((n) => rowPattern.test(n)))].sort((a, b) => a - b);
