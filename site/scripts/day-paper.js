// The booth day on paper: promises and jobs, the call sheet with boxes to tick, the cups, and the day by painter and place.
import { byId, el } from "./dom.js";
import { figures, head, incomplete, tables, verdict } from "./paper-card.js";
import { picture } from "./picture.js";
import { codePicture } from "./share-code.js";
import { say } from "./words.js";

/** Fills the sheet. code is the picture of the QR code, where it has been drawn. */
export function lay({ report }, code) {
  const sheet = byId("paper"), list = (key) => report.lists.filter((l) => l.key === key);
  sheet.className = "paper day";
  sheet.replaceChildren(
    ...(code ? [el("figure", { class: "paper-code" }, codePicture(code), el("figcaption", {}, say("Scan to open this form")))] : []),
    ...head(false), ...incomplete(report.problems), verdict(),
    ...tables(list("jobs_done")), ...list("call").map(calls), ...list("cups_mixed").map(cups),
    figures(report.figures.filter((f) => !f.key.startsWith("tried_"))),
    el("div", { class: "paper-pictures" }, el("p", {}, ...list("jobs_done").flatMap((l) => l.rows.flatMap((row, i) => [el("b", {}, String(i + 1)), ` ${row[0].text}   `]))),
      ...pictures(report, "by_place"),
      el("div", {}, ...pictures(report, "by_job"), el("ul", { class: "paper-cautions" }, ...report.cautions.map((c) => el("li", {}, c))))),
  );
}

const text = (f) => (f.text === "—" ? "" : f.text + (f.unit ? "\u202f" + f.unit : ""));

// In the order of time, two columns: a box, when, who, what, and what to mind.
function calls(l) {
  const at = Object.fromEntries(l.columns.map((c, i) => [c.key, i]));
  return el("div", { class: "paper-calls" }, el("h3", {}, l.label), el("ol", {}, ...l.rows.map((row) => {
    const [from, until, who, step, note, latest] = ["from", "until", "who", "step", "note", "no_later"].map((key) => text(row[at[key]]));
    return el("li", {}, el("i", { class: "box" }), el("b", {}, `${from}–${until}`), " ", who && el("span", { class: "paper-who" }, who), " ", el("span", {}, step),
      note && el("small", {}, ` ${note}`), latest && el("small", {}, ` ${l.columns[at.no_later].label} `, el("b", {}, latest)));
  })));
}

// Cups as a table whose last columns are words.
function cups(l) {
  return el("div", { class: "paper-table paper-cups" }, el("table", {},
    el("thead", {}, el("tr", {}, ...l.columns.map((c) => el("th", { scope: "col" }, c.label)))),
    el("tbody", {}, ...l.rows.map((row) => el("tr", {}, ...row.map((f, i) => el(i === 0 ? "th" : "td", i === 0 ? { scope: "row" } : {}, text(f))))))));
}

const pictures = (report, key) => report.pictures.filter((p) => p.key === key).map(drawn);

function drawn(p) {
  const figure = picture(p);
  figure.classList.add("day-picture", p.key);
  for (const t of figure.querySelectorAll(".ink-spray:not(.done) + text, .ink-spray:not(.done) + circle + text")) t.classList.add("on-spray");
  return figure;
}
