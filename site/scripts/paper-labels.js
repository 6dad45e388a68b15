// Labels for cups: what is in one, how to pour it, and lines to write on when it was mixed.
import { byId, el } from "./dom.js";
import { say } from "./words.js";

const sheet = byId("label-sheet");
const typed = (name) => byId("label-" + name).value.trim();
let report;

sheet.addEventListener("click", ({ target }) => {
  const doing = target.closest("[data-label]")?.dataset.label;
  if (target === sheet || doing === "close") sheet.close();
  if (doing === "print") printLabels();
});

/** Asks what is to stand on the labels. What the answer knows is not asked. */
export function openLabels(answer) {
  report = answer;
  const known = report.lists.some((l) => l.key === "labels");
  for (const name of ["product", "colour"]) {
    for (const e of [byId("label-" + name), sheet.querySelector(`[for="label-${name}"]`)]) e.hidden = known;
  }
  sheet.showModal();
}

function printLabels() {
  sheet.close();
  const page = el("div", { id: "labels", class: "paper" }, ...cups().map(label));
  const root = document.documentElement;
  root.dataset.paper = sheet.querySelector(":checked").value;
  document.body.append(page);
  addEventListener("afterprint", () => {
    page.remove();
    delete root.dataset.paper;
  }, { once: true });
  print();
}

// The cups of a job, or the one cup of a mix.
function cups() {
  const labels = report.lists.find((l) => l.key === "labels"), pour = report.lists.find((l) => l.key === "pour");
  if (!labels) return [{ product: typed("product"), colour: typed("colour"), rows: report.lists.find((l) => l.key === "component").rows }];
  return labels.rows.map(([cup, product, number, colour, life]) => ({
    product: product.text, number: number.text, colour: colour.text, life: life.text,
    lifeLabel: life.label, rows: pour.rows.filter((row) => row[0].text === cup.text).map((row) => row.slice(1)),
  }));
}

const given = (text) => text && text !== "—";
const line = (label, text) => el("p", { class: "label-line" }, el("span", {}, label), el("b", {}, given(text) ? text : ""));

function label({ product, number, colour, life, lifeLabel, rows }) {
  return el("section", { class: "label" },
    el("h2", {}, product || say("Mix")), number ? el("p", {}, number) : "",
    el("table", {}, el("caption", {}, rows[0].at(-1).label), el("tbody", {}, ...rows.map((row) => el("tr", {}, el("th", { scope: "row" }, row[0].text), el("td", {}, ...reading(row)))))),
    line(say("Colour"), colour), line(say("Thinner"), typed("thinner")), line(say("Mixed at"), ""), line(say("Use by"), ""),
    given(life) ? el("p", {}, lifeLabel, " ", life) : "",
    line(say("Job"), typed("job")), el("p", { class: "mind" }, say("The data sheet and the safety data sheet come first.")));
}

// What the scale reads after this part, or its volume where it is poured by the cup's marks.
function reading(row) {
  const f = [row.at(-1), ...row].find((c) => c.unit_id !== undefined);
  return f ? [f.text, el("span", { class: "unit-text" }, "\u202f" + f.unit)] : [];
}
