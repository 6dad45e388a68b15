// The page of the log: one month by day, its totals and those of twelve months, and copies to take away.
import { Card } from "./answer.js";
import { kept, valuesOf, watch } from "./db.js";
import { byId, el } from "./dom.js";
import { DayList } from "./log-list.js";
import { asRows, before, entriesOf, reportsOf, shares, sound, totalsOf, withList } from "./log-months.js";
import { saveFile } from "./log-file.js";
import { preparePrint } from "./log-print.js";
import { ask, hand, inUS, today } from "./log-store.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { forget } from "./shelf-shown.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

export async function open() {
  const card = new Card(), settings = new Settings(byId("log-form"), () => totals().catch((error) => notify(error.message)));
  const list = new DayList(byId("log-days"), () => month);
  let days = [], month = store.get("log-month") || today().day.slice(0, 7), parts = [], turn = 0;
  byId("log-refused").hidden = await kept();
  byId("log-new").addEventListener("click", () => { hand(""); forget("mix-record"); });

  async function show() {
    const mine = ++turn;
    days = await valuesOf("mix", "day");
    byId("log-none").hidden = days.length > 0;
    byId("log-all").hidden = days.length === 0;
    if (days.length === 0) return;
    monthsToChoose();
    const entries = await entriesOf(month);
    const found = await reportsOf(month, entries);
    if (mine !== turn) return;
    parts = found.parts;
    await list.show(parts);
    byId("log-empty").hidden = entries.length > 0;
    await totals(mine);
  }

  // The sums of the month and the twenty-two before it are asked for in one question, those of each product of the last
  // twelve in as many as their names need.
  async function totals(mine = ++turn) {
    const from = before(month, 22), year = before(month, 11), whole = [], products = [], bad = [];
    for (const m of monthsOf(days).filter((m) => m >= from && m <= month)) {
      byId("log-busy").textContent = say("Adding up {month} …", { month: m });
      const found = await totalsOf(m);
      if (mine !== turn) return;
      whole.push(...found.whole);
      if (m >= year) products.push(...found.products);
      if (found.bad === 1) bad.push(say("1 entry of {month} cannot be read, and is not counted.", { month: m }));
      if (found.bad > 1) bad.push(say("{n} entries of {month} cannot be read, and are not counted.", { n: found.bad, month: m }));
    }
    byId("log-bad").hidden = bad.length === 0;
    byId("log-bad").replaceChildren(...bad.map((text) => el("span", {}, text)));
    const report = whole.length > 0 && (await added(whole, products));
    if (mine !== turn) return;
    byId("log-busy").textContent = "";
    byId("card").hidden = !report;
    if (report) card.show(report);
  }

  async function added(whole, products) {
    const asked = (lines, form) => ask("mix-log", new Map([...asRows(lines), ["log_month", month], ...form]));
    let report = await asked(whole, settings.values);
    settings.wrong(report.problems);
    if (report.problems.length > 0) report = sound(await asked(whole, new Map()));
    report = { ...report, lists: report.lists.filter((l) => l.key !== "product_total") }; // of all products as one
    for (const some of shares(products)) report = withList(report, "product_total", sound(await asked(some, new Map())));
    return report;
  }

  function monthsToChoose() {
    const months = [...new Set([...monthsOf(days), month])].sort().reverse();
    byId("log-which").replaceChildren(...months.map((m) => el("option", { value: m }, m)));
    byId("log-which").value = month;
    byId("log-before").disabled = months.at(-1) === month;
    byId("log-after").disabled = months[0] === month;
  }

  function choose(next) {
    month = next;
    store.set("log-month", next === today().day.slice(0, 7) ? "" : next);
    show().catch((error) => notify(error.message));
  }
  const step = (by) => () => choose(byId("log-which").options[byId("log-which").selectedIndex + by].value);
  byId("log-which").addEventListener("change", ({ target }) => choose(target.value));
  byId("log-before").addEventListener("click", step(1));
  byId("log-after").addEventListener("click", step(-1));
  for (const b of document.querySelectorAll("[data-csv]")) {
    b.addEventListener("click", () => {
      const from = { month, year: before(month, 11), all: "" }[b.dataset.csv];
      saveFile(monthsOf(days).filter((m) => m >= from && (b.dataset.csv === "all" || m <= month)), settings.values).catch((error) => notify(error.message));
    });
  }
  byId("log-print").addEventListener("click", () => print());
  preparePrint(() => ({ month, parts }));
  watch((kind) => kind === "mix" && show().catch((error) => notify(error.message)));
  await show().catch((error) => notify(error.message));
}

const monthsOf = (days) => [...new Set(days.map((day) => day.slice(0, 7)))];

// What is asked on the page itself: the limit, and the units of the file. It is kept.
class Settings {
  values = parse(store.get("log-settings"));
  #root;

  constructor(root, changed) {
    this.#root = root;
    const usual = inUS() ? { "mass_limit.unit": "lb" } : {};
    if (inUS() && !this.values.has("csv_units")) this.values.set("csv_units", "us");
    for (const c of root.querySelectorAll("input[name], select[name]")) {
      const value = this.values.get(c.name);
      if (c.type === "radio") c.checked = value ? c.value === value : c.checked;
      else if (value) c.value = value;
      else if (usual[c.name]) c.value = usual[c.name];
    }
    root.addEventListener("submit", (event) => event.preventDefault());
    root.addEventListener("change", ({ target }) => {
      if (!target.name) return; // the month is no setting
      this.#read();
      changed();
    });
  }

  #read() {
    const data = new FormData(this.#root);
    this.values = new Map([...data].filter(([key, text]) => text.trim() !== "" && (!key.endsWith(".unit") || data.get(key.slice(0, -5))?.trim())));
    store.set("log-settings", write(this.values));
  }

  wrong(problems) {
    for (const note of this.#root.querySelectorAll(".fields .wrong")) {
      const p = problems.find((q) => "w-" + q.field === note.id);
      note.hidden = !p;
      note.textContent = p ? sentence(p) : "";
    }
  }
}
