// Lists of the answer: a table, a scale column to pour by, or a call sheet.
import { el } from "./dom.js";
import { timerButton } from "./timer-button.js";

/** Draws a list. work(place, row, column) puts the working of a cell into its place. */
export function list(l, look, work) {
  const draw = { pour, clock }[look] ?? table;
  const box = draw(l, (row, column) => cell(l.rows[row][column], `${row}.${column}`));
  box.addEventListener("click", (event) => {
    const button = event.target.closest("button.cell");
    if (!button) return;
    const [row, column] = button.dataset.cell.split(".").map(Number);
    toggle(button, (place) => work(place, row, column));
  });
  return box;
}

// A cell opens its working beneath its row; one without working is plain text.
function cell(f, name) {
  const text = [f.text, f.unit ? el("span", { class: "unit-text" }, "\u202f" + f.unit) : ""];
  if (f.steps.length === 0) return el("span", { class: "cell" }, ...text);
  return el("button", { type: "button", class: "cell", "aria-expanded": "false", "data-cell": name }, ...text);
}

function toggle(button, work) {
  const row = button.closest("[data-line]");
  const open = button.getAttribute("aria-expanded") === "true";
  for (const b of row.querySelectorAll('[aria-expanded="true"]')) b.setAttribute("aria-expanded", "false");
  if (row.nextElementSibling?.matches(".beneath")) row.nextElementSibling.remove();
  if (open) return;
  button.setAttribute("aria-expanded", "true");
  const steps = el("ol", { class: "steps" });
  const across = row.tagName === "TR";
  row.after(across ? el("tr", { class: "beneath", role: "row" }, el("td", { role: "cell", colspan: String(row.children.length) }, steps)) : el("li", { class: "beneath" }, steps));
  work(steps);
}

const longCell = 14; // characters; longer ones take a line of their own on a narrow card

// Roles are spelled out because a narrow card shows the rows as blocks, and browsers then forget that it is a table.
function table(l, make) {
  const head = l.columns.map((c) => el("th", { role: "columnheader", scope: "col" }, c.label));
  const rows = l.rows.map((row, i) => el("tr", { role: "row", "data-line": "" }, ...row.map((f, k) =>
    el("td", { role: "cell", class: f.text.length > longCell ? "wordy" : "" }, el("span", { class: "col", "aria-hidden": "true" }, l.columns[k].label), " ", make(i, k), timerButton(f, `${l.key}.${i}.${k}`, `${row[0].text}, ${f.label}`)))));
  return el("div", { class: "list" }, el("table", { role: "table" }, el("caption", {}, l.label),
    el("thead", { role: "rowgroup" }, el("tr", { role: "row" }, ...head)), el("tbody", { role: "rowgroup" }, ...rows)));
}

const ticked = new Set(); // what has been poured; it is gone with the page

// The first column names the cup, the second what goes in, the last what the scale then reads.
function pour(l, make) {
  const box = el("div", { class: "list pour" }, el("p", { class: "list-title" }, l.label));
  let cup, lines;
  l.rows.forEach((row, i) => {
    if (lines === undefined || row[0].text !== cup) {
      cup = row[0].text;
      lines = el("ol", { class: "pour-lines" });
      box.append(el("div", { class: "pour-cup" }, el("p", { class: "cup" }, cup, el("span", { class: "cup-reads" }, l.columns.at(-1).label)), lines));
    }
    const between = row.slice(2, -1).map((_, k) => make(i, k + 2));
    lines.append(el("li", { class: "pour-line", "data-line": "" }, tick(cup, row), el("span", { class: "added" }, ...between), el("span", { class: "reading" }, make(i, row.length - 1))));
  });
  return box;
}

// A tick belongs to a reading: when the reading changes, what was poured is no longer what is asked.
function tick(cup, row) {
  const key = [cup, row[1].text, row.at(-1).text].join("|");
  const box = el("input", { type: "checkbox" });
  box.checked = ticked.has(key);
  box.addEventListener("change", () => (box.checked ? ticked.add(key) : ticked.delete(key)));
  return el("label", { class: "pour-part" }, box, el("span", {}, row[1].text));
}

// From, until, who where it says so, what, what to mind, and times not to miss. A row names the step that it is about.
function clock(l, make) {
  const what = l.columns.findIndex((c) => c.key === "step");
  const lines = l.rows.map((row, i) => {
    const said = (k) => k > 1 && row[k].text && row[k].text !== "—";
    const part = (k, name, ...before) => (said(k) ? [el("span", { class: name }, ...before, make(i, k))] : []);
    const times = row.slice(what + 2).flatMap((_, k) => part(k + what + 2, "clock-mind clock-latest", l.columns[k + what + 2].label, " "));
    const line = el("li", { class: "clock-line", "data-line": "" },
      el("span", { class: "clock-time" }, make(i, 0), row[1].text ? el("span", { class: "until" }, "–", make(i, 1)) : ""),
      ...(what > 2 ? part(2, "clock-who") : []), ...part(what, "clock-what"), ...part(what + 1, "clock-mind"), ...times,
      ...row.map((f, k) => timerButton(f, `${l.key}.${i}.${k}`, what > 2 ? f.timer?.of : f.text)));
    if (row[what].of) line.dataset.of = row[what].of;
    return line;
  });
  return el("div", { class: "list clock" }, el("p", { class: "list-title" }, l.label), el("ol", { class: "clock-lines" }, ...lines));
}
