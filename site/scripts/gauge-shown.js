// What the gauge bench shows of an answer: the board above the keys, what is wrong, and the readings.
import { byId, el, fill } from "./dom.js";
import { placeOf } from "./gauge-readings.js";
import { sentence } from "./problems.js";
import { levelWord } from "./words.js";
import { say } from "./words.js";

const narrow = "\u202f";

/** The unit that a reading is in, as its symbol. */
export function symbolOf(r) {
  const unit = byId("gauge-unit");
  return [...unit.options].find((o) => o.value === (r.unit || unit.dataset.own)).textContent;
}

/** The board: verdict, mean, lowest and last reading, always beside the keys. */
export function showBoard(report, readings) {
  const board = byId("gauge-board"), ruling = report.verdict[0], last = readings.at(-1);
  const figure = (key) => {
    const f = report.figures.find((x) => x.key === key);
    return f ? f.text + narrow + f.unit : "–";
  };
  board.hidden = !last;
  board.className = `gauge-board ${ruling?.level ?? ""}`;
  fill(board, {
    word: ruling ? levelWord(ruling.level) : "",
    mean: figure("film_mean"), low: figure("film_lowest"), last: last ? last.text + narrow + symbolOf(last) : "",
  });
}

/** What is wrong, beside the keys and under each field. Returns the places of the readings that cannot be read. */
export function showWrong(report, readings) {
  const wrong = report.problems.filter((p) => p.code !== "missing");
  const noFilm = readings.length > 0 && report.problems.some((p) => p.field === "dry_film" && p.code === "missing");
  const line = byId("gauge-wrong");
  line.hidden = wrong.length === 0 && !noFilm;
  line.textContent = wrong.length > 0 ? wrong.map((p) => (p.row ? say("{row}: {message}. {fix}.", p) : sentence(p))).join(" ") : say("Enter the dry film specified: the readings are judged against it.");
  if (noFilm) byId("gauge-given").open = true;
  for (const field of byId("form").querySelectorAll("[data-field]")) {
    const p = wrong.find((q) => q.field === field.dataset.field), note = byId("w-" + field.dataset.field);
    note.hidden = !p;
    note.textContent = p ? sentence(p) : "";
  }
  return new Set(wrong.map(placeOf));
}

/** What is specified, in the words of the form. */
export function specification(unit) {
  const film = byId("f-dry_film"), rule = byId("form").querySelector('[name="gauge_rule"]:checked')?.nextElementSibling ?? byId("f-gauge_rule")?.selectedOptions[0];
  const symbol = unit.selectedOptions[0].textContent ?? "";
  return film.value.trim() ? say("{film}, {rule}", { film: film.value.trim() + narrow + symbol, rule: rule?.textContent ?? "" }) : "";
}

/** The readings, each a button that takes it out. */
export function showReadings(readings, takeOut) {
  byId("gauge-readings").replaceChildren(...readings.map((r, i) => {
    const button = el("button", { type: "button", "aria-label": say("Take out reading {n}: {text}", { n: i + 1, text: `${r.text} ${symbolOf(r)}` }) }, r.text);
    button.addEventListener("click", () => takeOut(i));
    return el("li", {}, button);
  }));
  byId("gauge-count").textContent = String(readings.length);
  byId("gauge-empty").hidden = readings.length > 0;
}

/** Marks the readings at some places, counted from 1 as texts. */
export const markReadings = (places, name) => [...byId("gauge-readings").children].forEach((item, i) => item.classList.toggle(name, places.has(String(i + 1))));
