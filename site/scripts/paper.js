// What paper alone shows: the answer's grounds in few lines, and the first caution beside the verdict.
import { byId, el } from "./dom.js";

/** Brings the paper's own lines up to date before the page is printed. report gives the answer as it stands. */
export function preparePaper(main, report) {
  const prepare = () => {
    const cautions = [...byId("cautions").children];
    const first = cautions.find((c) => c.textContent.includes("breathing")) ?? cautions[0]; // what to wear comes first
    for (const c of cautions) c.classList.toggle("first", c === first);
    byId("paper-caution").textContent = first?.textContent ?? "";
    byId("paper-given").replaceChildren(...[...main.querySelectorAll("#form .place")].flatMap((place) => lines(place, report()?.rows ?? [])));
  };
  addEventListener("beforeprint", prepare);
  matchMedia("print").addEventListener("change", (event) => event.matches && prepare());
}

function lines(place, rows) {
  const name = el("b", {}, place.dataset.place ?? "Given");
  const sentences = [...place.querySelectorAll("[data-table]")].flatMap((t) => rows.filter((r) => r.row.startsWith(t.dataset.table + ".")));
  const readings = [...place.querySelectorAll("[data-field]:not([data-table], [hidden])")].filter((f) => !f.closest("[data-table], [hidden]")).map(reading).filter(Boolean);
  const all = sentences.map((r, i) => `${i + 1}. ${r.text}`).concat(readings);
  return all.length > 0 ? [el("p", {}, name, " ", all.join("; "))] : [];
}

// A field as a person would say it: "Air temperature 29 °C". Blank ones are passed over.
function reading(field) {
  const box = field.querySelector(".entry input"), unit = field.querySelector(".unit");
  const list = field.querySelector("select.choice"), chip = field.querySelector(".chips :checked");
  const symbol = unit?.selectedOptions?.[0].textContent ?? unit?.textContent ?? "";
  const said = box?.value.trim() || (list?.value && list.selectedOptions[0].textContent) || chip?.nextElementSibling.textContent;
  return said ? `${field.dataset.label} ${said}${symbol && "\u202f" + symbol}` : "";
}
