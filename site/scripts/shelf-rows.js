// Rows that are products: filled from data sheets, added from several at once, and kept as data sheets.
import { Conflict } from "./db.js";
import { notify } from "./notices.js";
import { rowPattern } from "./rows.js";
import { button, choosing, send } from "./shelf-ask.js";
import { against, columnsOf } from "./shelf-fits.js";
import { Picker } from "./shelf-picker.js";
import { alike, freeName, itemFrom, itemsOf, keepAll, tellRefused, textOf } from "./shelf-store.js";
import { parse } from "./state.js";
import { say } from "./words.js";

const ofTheJob = ["on_colour", "of_job", "spray_time", "coat_amount", "flash_last", "recoat_within", "new_cup", "may_leave", "shade", "mix_time"]; // what a row says that no data sheet does

export function offerRows(main, table, latest) {
  const fields = columnsOf(table), key = table.dataset.table;
  let row; // the row that the picker fills
  const sheets = () => itemsOf("data-sheet");
  const describe = (item) => parse(item.form).get("ratio") ?? "";
  const one = new Picker({ items: sheets, describe, choose: ([item]) => fillRow(main, fields, row, item, latest().form, one) });
  const several = new Picker({ items: sheets, describe, several: true, choose: (items) => {
    addRows(main, table, fields, items, latest().form);
    several.close();
  } });

  const add = button(say("Add from the shelf"), () => {
    one.close();
    several.toggle(add, say("Tick the data sheets, in the order you spray them."));
  });
  add.setAttribute("aria-expanded", "false");
  table.append(add, several.element, one.element);

  // Rows come and go, so that each gets its tools when it is opened.
  table.addEventListener("toggle", ({ target }) => {
    const tools = target.open && target.querySelector(".rowtools:not(:has(.from-shelf))");
    if (!tools) return;
    const from = button(say("From the shelf"), () => {
      row = from.closest(".row").dataset.row;
      several.close();
      one.open(from, say("Fill row {n} from a data sheet.", { n: row.split(".")[1] }));
    }, "plain from-shelf");
    from.setAttribute("aria-expanded", "false");
    tools.append(from, button(say("Keep as a data sheet"), () => keepRow(from.closest(".row").dataset.row, key, latest().form)));
  }, true);
}

// Blank cells are filled at once; where something else stands the person decides.
function fillRow(main, fields, row, item, form, picker) {
  const { blank, differs } = against(fields, parse(item.form), form, row + ".");
  const says = say("Row {n} filled in from {name}.", { n: row.split(".")[1], name: item.name });
  if (differs.length === 0) picker.close();
  send(main, blank, says);
  if (differs.length === 0) return;
  picker.ask(choosing(say("Here row {n} says something else than “{name}”:", { n: row.split(".")[1], name: item.name }), differs, (ticked) => {
    picker.close();
    send(main, ticked, says);
  }, () => picker.close()));
}

const rowNumbers = (form, key) => [...new Set([...form.keys()].filter((k) => k.startsWith(key + ".")).map((k) => k.split(".")[1]).filter((n) => rowPattern.test(n)))].map(Number);

function addRows(main, table, fields, items, form) {
  const key = table.dataset.table;
  const numbers = rowNumbers(form, key);
  const room = Number(table.dataset.most) - numbers.length;
  const added = items.slice(0, room);
  let n = Math.max(0, ...numbers);
  const changes = added.flatMap((item) => against(fields, parse(item.form), form, `${key}.${++n}.`).blank);
  const names = added.map((item) => item.name).join(", ");
  send(main, changes, say("Added from the shelf: {names}.", { names }));
  if (added.length < items.length) notify(say("The table holds {most} rows at most; the others were left out.", { most: table.dataset.most }));
}

/** The form of a data sheet that a row holds. */
function sheetOf(row, key, form) {
  const sheet = new Map();
  for (const [k, text] of form) {
    const rest = k.startsWith(row + ".") ? k.slice(row.length + 1) : "";
    if (rest && !ofTheJob.includes(rest)) sheet.set(rest, text);
  }
  for (const column of [...sheet.keys()].filter((c) => !c.endsWith(".unit"))) {
    const unit = form.get(`${key}.${column}.unit`);
    if (unit && !sheet.has(column + ".unit")) sheet.set(column + ".unit", unit);
  }
  return sheet;
}

async function keepRow(row, key, form) {
  const sheet = sheetOf(row, key, form), name = sheet.get("product") ?? "";
  if (!name) return notify(say("Say first what the product is called."));
  const same = (await itemsOf("data-sheet")).filter((item) => alike(item.name, name));
  const asNew = async () => {
    const free = await freeName("data-sheet", name);
    if (!(await keepAll(itemFrom("data-sheet", new Map([...sheet, ["product", free]]))))) return;
    notify(say("“{name}” is on the shelf now.", { name: free }));
    tellRefused();
  };
  if (same.length === 0) return asNew();
  if (same.some((item) => item.form === textOf("data-sheet", sheet))) return notify(say("“{name}” is on the shelf already, just like this.", { name }));
  // What the row does not ask for stays as the sheet has it.
  const changed = { ...same[0], form: textOf("data-sheet", new Map([...parse(same[0].form), ...sheet])) };
  const change = async () => {
    try {
      if (await keepAll(changed)) notify(say("“{name}” on the shelf was changed.", { name }), { [say("Undo")]: () => back(same[0]), [say("Close")]: undefined });
    } catch (error) {
      if (!(error instanceof Conflict)) throw error;
      notify(say("Another tab has changed “{name}” meanwhile. Nothing was kept.", { name }));
    }
  };
  notify(say("“{name}” is on the shelf already and says something else.", { name }), { [say("Change that one")]: change, [say("Keep as another")]: asNew, [say("Close")]: undefined });
}

const back = (item) => keepAll({ ...item, rev: item.rev + 1 }).catch(() => notify(say("Another tab has changed “{name}” meanwhile. Nothing was kept.", { name: item.name })));
