// Lays the answer out for paper: verdict, what it rests on, every figure and list in few lines, and the QR code.
import { byId, el } from "./dom.js";
import { sentence } from "./problems.js";
import { codePicture } from "./share-code.js";
import { say } from "./words.js";

const mostColumns = 12; // that stand side by side across the page
const mostProblems = 8; // that are written out
const longCell = 14; // characters; longer cells are written beneath the table

/** Fills the sheet. code is the picture of the QR code, where it has been drawn. */
export function lay({ id, report }, code) {
  const sheet = byId("paper");
  const lists = (look) => report.lists.filter((l) => lookOf(l.key) === look);
  const [first, ...cautions] = [...byId("cautions").children].map((c) => c.textContent);
  const dataSheet = id === "data-sheet";
  sheet.className = `paper ${id}`;
  sheet.classList.toggle("roomy", report.lists.length === 0);
  sheet.replaceChildren(
    ...(code ? [el("figure", { class: "paper-code" }, codePicture(code), el("figcaption", {}, say("Scan to open this form")))] : []),
    ...head(dataSheet),
    ...(dataSheet ? groups() : [
      ...incomplete(report.problems), verdict(), ...(first ? [el("p", { class: "paper-caution" }, first)] : []),
      el("div", { id: "paper-given" }, ...[...document.querySelectorAll("#form .place")].flatMap((place) => given(place, report.rows))),
      figures(report.figures),
      ...lists("pour").map((l) => pour(l, report.lists.find(({ key }) => key === "labels"))), ...tables(lists("")), ...lists("clock").map(clock),
      ...(lists("clock").length > 0 ? [] : byId("pictures").cloneNode(true).childNodes),
    ]),
    el("ul", { class: "paper-cautions" }, ...(dataSheet ? [first, ...cautions] : cautions).filter(Boolean).map((c) => el("li", {}, c))),
  );
}

const lookOf = (key) => document.querySelector(`#card [data-out="${CSS.escape(key)}"]`)?.dataset.look;

export function head(dataSheet) {
  const product = byId("f-product")?.value.trim();
  const title = dataSheet ? product || say("Data sheet") : byId("card-title").textContent;
  const invented = byId("invented");
  const question = dataSheet || byId("invented") ? "" : document.querySelector("h1").textContent;
  return [
    el("div", { class: "written" }, el("h2", {}, title), say("Date"), el("span"), dataSheet ? say("Checked by") : say("Painter"), el("span"),
      el("b", {}, document.querySelector(".home").textContent), invented && !invented.hidden ? invented.textContent : ""),
    ...(question ? [el("p", { class: "paper-question" }, question)] : []),
  ];
}

export function verdict() {
  const rulings = byId("verdict").cloneNode(true);
  rulings.removeAttribute("id");
  for (const e of rulings.querySelectorAll(".why")) e.after(" ");
  for (const d of rulings.querySelectorAll("details")) d.remove();
  return rulings;
}

// A card whose form lacks something, or has something wrong, says so before all else.
export function incomplete(problems) {
  if (problems.length === 0) return [];
  return [el("div", { class: "paper-incomplete" }, el("b", {}, say("Not complete: {n} to fill in or put right", { n: problems.length })),
    ...problems.slice(0, mostProblems).map((p) => el("p", {}, (p.row ? p.row + ": " : "") + sentence(p))))];
}

// Fields as a person would say them: "Air temperature 29 °C". Blank ones, and those that stand as they were at first,
// are passed over.
function given(place, rows) {
  const sentences = [...place.querySelectorAll("[data-table]")].flatMap((t) => rows.filter((r) => r.row.startsWith(t.dataset.table + ".")));
  const readings = fieldsOf(place).map((f) => [f.dataset.label, entered(f, true)]).filter(([, said]) => said).map((pair) => pair.join(" "));
  const all = sentences.map((r) => `${r.row.split(".").pop()}. ${r.text}`).concat(readings); // numbered as in the form
  return all.length > 0 ? [el("p", {}, el("b", {}, place.dataset.name ?? say("Given")), " ", all.join("; "))] : [];
}

const fieldsOf = (root) => [...root.querySelectorAll("[data-field]:not([data-table], [hidden])")].filter((f) => !f.closest("[data-table], [hidden]"));

function entered(field, changed) {
  const box = field.querySelector(".entry input"), unit = field.querySelector(".unit");
  const list = field.querySelector("select.choice"), chip = field.querySelector(".chips :checked");
  if (changed && box?.dataset.default !== undefined && box.value === box.dataset.default && (unit?.value ?? unit?.dataset.own) === unit?.dataset.own) return "";
  const symbol = unit?.selectedOptions?.[0].textContent ?? unit?.textContent ?? "";
  const said = box?.value.trim() || (list?.value && list.selectedOptions[0].textContent) || chip?.nextElementSibling.textContent;
  return said ? said + (symbol && "\u202f" + symbol) : "";
}

// The form itself, under its headings, as a data sheet is read.
function groups() {
  const all = [];
  for (const e of document.querySelectorAll("#form .fields > :not([hidden])")) {
    const label = e.dataset.label;
    if (e.matches("h3")) all.push(el("section", {}, el("h3", {}, e.textContent), el("dl")));
    else if (label && entered(e)) {
      if (all.length === 0) all.push(el("section", {}, el("dl")));
      all.at(-1).lastChild.append(el("div", {}, el("dt", {}, label), el("dd", {}, entered(e))));
    }
  }
  return [el("div", { class: "paper-groups" }, ...all.filter((s) => s.lastChild.firstChild))];
}

const number = (f) => [el("b", {}, f.text), f.unit ? el("span", { class: "unit-text" }, "\u202f" + f.unit) : ""];

export const figures = (all) => el("p", { class: "paper-figures" }, ...all.map((f) => el("span", {}, f.label, " ", ...number(f))));

// A scale column: a box to tick for each of the cups that are alike, what is added, and what the scale then reads.
function pour(l, labels) {
  const groups = new Map();
  for (const row of l.rows) groups.set(row[0].text, [...(groups.get(row[0].text) ?? []), row]);
  return el("div", { class: "paper-pour" }, ...[...groups].map(([cup, rows]) => el("table", {},
    el("caption", {}, cup, " ", el("span", {}, l.columns.at(-1).label)),
    ...rows.map((row) => el("tr", {}, el("td", { class: "boxes" }, ...boxes(cup, labels)), el("th", { scope: "row" }, row[1].text),
      ...row.slice(2, -1).map((f) => el("td", {}, ...number(f))), el("td", { class: "reading" }, ...number(row.at(-1))))))));
}

const boxes = (cup, labels) => (labels?.rows.filter((row) => row[0].text === cup) ?? [cup]).map(() => el("i", { class: "box" }));

// A call sheet. An end at which the next begins, and a note that stands above already, are left out.
function clock(l) {
  const said = new Set();
  const lines = l.rows.map(([from, until, what, note], i) => {
    const end = until.text && until.text !== l.rows[i + 1]?.[0].text ? "–" + until.text : "";
    const mind = note.text && !said.has(note.text) ? " " + note.text : "";
    said.add(note.text);
    return el("li", {}, el("b", {}, from.text + end), " ", what.text, el("i", {}, mind));
  });
  return el("div", { class: "paper-clock" }, el("h3", {}, l.label), el("ol", {}, ...lines));
}

// Tables about the same things stand side by side as one, as far as the page is wide.
export function tables(lists) {
  const joined = [];
  for (const l of lists) {
    const names = l.rows.map((row) => row[0].text);
    const columns = l.columns.slice(1).map((c, i) => ({ label: c.label, cells: l.rows.map((row) => row[i + 1]) }));
    const wordy = columns.filter((c) => c.cells.some((f) => f.text.length > longCell));
    const short = columns.filter((c) => !wordy.includes(c));
    const home = joined.find((t) => String(t.names) === String(names) && t.columns.length + short.length <= mostColumns);
    if (home) {
      home.titles.push(l.label);
      home.columns.push(...short);
      home.wordy.push(...wordy);
    } else {
      joined.push({ titles: [l.label], names, columns: short, wordy });
    }
  }
  return joined.map(table);
}

// The unit that all of a column is in, for its head.
function unitOf(column) {
  const units = new Set(column.cells.map((f) => f.unit).filter(Boolean));
  return units.size === 1 ? [...units][0] : undefined;
}

export function table({ titles, names, columns, wordy }) {
  const th = (c) => el("th", { scope: "col" }, c.label, unitOf(c) ? el("span", { class: "unit-text" }, " " + unitOf(c)) : "");
  const numbered = wordy.length > 0 && names.length > 1; // what is said beneath goes by numbers
  const row = (name, i) => el("tr", {}, el("th", { scope: "row" }, numbered && !/^\d/.test(name) ? `${i + 1}. ${name}` : name), ...columns.map((c) => el("td", {}, ...(unitOf(c) ? [c.cells[i].text] : number(c.cells[i])))));
  return el("div", { class: "paper-table" },
    el("table", {}, el("thead", {}, el("tr", {}, el("th", {}, el("b", {}, titles.join(" · "))), ...columns.map(th))), el("tbody", {}, ...names.map(row))),
    ...wordy.map((c) => el("p", {}, el("b", {}, c.label), " ", ...notes(c.cells, numbered))));
}

// What is the same for several is said once.
function notes(cells, numbered) {
  const said = new Map();
  cells.forEach((f, i) => said.set(f.text, [...(said.get(f.text) ?? []), i + 1]));
  return [...said].map(([text, whose]) => (numbered ? `${whose.join(", ")}: ${text}. ` : `${text}. `));
}
