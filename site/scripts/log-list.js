// The mixes of a month by day, each a line that opens.
import { Conflict } from "./db.js";
import { byId, copy, el, fill, slot } from "./dom.js";
import { ask, check, edit, keep, takeOut } from "./log-store.js";
import { remember } from "./log-transfer.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { parse } from "./state.js";
import { levelWord, say } from "./words.js";

const measure = (f) => (f.unit ? `${f.text}\u202f${f.unit}` : f.text);

/** The cells of a list's row, by key. */
export const cells = (l, row) => Object.fromEntries(l.columns.map((c, i) => [c.key, row[i]]));

const listOf = (report, key) => report.lists.find((l) => l.key === key);

/** Each entry of a month's reports with its cells. */
export const shown = (parts) => parts.flatMap(({ entries, report }) => entries.map((entry, i) => ({ entry, cell: cells(listOf(report, "entry"), listOf(report, "entry").rows[i]) })));

/** The days of a month's reports with their totals, the latest first. Those of a day that two reports share are added up
 * by the core. */
async function daysOf(parts, month) {
  const rows = parts.flatMap(({ report }) => listOf(report, "day_total").rows.map((row) => cells(listOf(report, "day_total"), row)));
  if (new Set(rows.map((c) => c.day.text)).size === rows.length) return rows;
  const form = new Map([["log_month", month]]);
  rows.forEach((c, i) => {
    const put = (key, f) => f.unit_id && form.set(`mix.${i + 1}.${key}`, f.full).set(`mix.${i + 1}.${key}.unit`, f.unit_id);
    form.set(`mix.${i + 1}.mixed_on`, c.day.text);
    put("mixes", c.mixes);
    put("mixed_volume", c.volume);
    put("mixed_mass", c.mass);
    put("voc_weighed", c.voc_mass);
  });
  const l = listOf(await ask("mix-log", form), "day_total");
  return l.rows.map((row) => cells(l, row));
}

export class DayList {
  #root;
  #month;
  #opened; // the id of the entry that is open

  constructor(root, month) {
    this.#root = root;
    this.#month = month;
    root.addEventListener("toggle", ({ target }) => target.matches?.(".log-entry") && this.#toggled(target), true);
  }

  async show(parts) {
    const rows = shown(parts), days = await daysOf(parts, this.#month());
    const focus = this.#root.contains(document.activeElement);
    this.#opened = this.#root.querySelector(".log-entry[open]")?.entry.id ?? this.#opened; // it may just have been opened
    this.#root.replaceChildren(...days.map((day) => el("section", { class: "log-day" },
      el("h2", {}, el("span", { class: "log-date" }, day.day.text), " ", el("span", { class: "log-sums" }, this.#sums(day))),
      el("ol", {}, ...rows.filter(({ entry }) => entry.day === day.day.text).map((row) => this.#row(row))))));
    const again = [...this.#root.querySelectorAll(".log-entry")].find((d) => d.entry.id === this.#opened);
    if (!again) return;
    again.open = true;
    if (focus) again.querySelector("summary").focus();
  }

  #sums(day) {
    const holes = { n: day.mixes.text, volume: measure(day.volume), voc: measure(day.voc_mass) };
    return day.mixes.typed === "1" ? say("1 mix, {volume}, VOC {voc}", holes) : say("{n} mixes, {volume}, VOC {voc}", holes);
  }

  #row({ entry, cell }) {
    const item = fill(copy("part-entry"), {
      time: cell.time.text, product: cell.product.text, volume: cell.volume.unit ? measure(cell.volume) : measure(cell.mass), voc: say("VOC {voc}", { voc: measure(cell.voc_mass) }),
    });
    const details = item.querySelector("details");
    Object.assign(details, { entry, cell });
    return item;
  }

  // One is open at a time, because its field has a name on the page.
  async #toggled(details) {
    const holder = details.querySelector(".log-open");
    if (!details.open) {
      holder.replaceChildren();
      if (this.#opened === details.entry.id) this.#opened = undefined;
      return;
    }
    for (const other of this.#root.querySelectorAll(".log-entry[open]")) {
      if (other === details) continue;
      other.open = false;
      other.querySelector(".log-open").replaceChildren();
    }
    this.#opened = details.entry.id;
    const open = copy("part-open");
    holder.replaceChildren(open);
    new OpenEntry(open, details.entry, details.cell).show().catch((error) => notify(error.message));
  }
}

// An entry that is open: what is known of it, what is left in its cup, and what can be done with it.
class OpenEntry {
  constructor(root, entry, cell) {
    Object.assign(this, { root, entry, cell });
    this.form = parse(entry.form);
    this.box = byId("f-left_mass");
    this.unit = root.querySelector("select.unit");
    this.box.value = this.form.get("left_mass") ?? "";
    if (this.form.has("left_mass.unit")) this.unit.value = this.form.get("left_mass.unit");
    root.querySelector(".log-left").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#weigh().catch((error) => notify(error.message));
    });
    root.addEventListener("click", ({ target }) => this[target.dataset.do]?.());
  }

  async show() {
    const facts = ["volume", "mass", "voc_mass", "booth", "who"].map((key) => this.cell[key]).filter((f) => f.text !== "—");
    this.root.querySelector(".log-facts").replaceChildren(...facts.map((f) => el("p", {}, el("span", { class: "soft" }, f.label), " ", el("b", {}, measure(f)))), ...this.#parts());
    if (this.form.has("left_mass")) this.#told(await ask("mix-record", this.form));
  }

  #parts() {
    const names = [...this.form.keys()].filter((key) => /^poured_part\.\d+\.poured_name$/.test(key)).map((key) => this.form.get(key));
    return names.length > 0 ? [el("p", {}, el("span", { class: "soft" }, say("Poured")), " ", names.join(", "))] : [];
  }

  // The verdict on what stayed on the part.
  #told(report) {
    slot(this.root, "verdict").replaceChildren(...report.verdict.map((r) => {
      const item = fill(copy("part-ruling"), { word: levelWord(r.level), why: r.why, do: r.do });
      item.classList.add(r.level);
      item.querySelector("details").remove();
      return item;
    }));
    this.te = report.figures.find((f) => f.key === "transfer_found");
    const next = this.root.querySelector('[data-do="next"]');
    next.hidden = !this.te;
    if (this.te) next.textContent = say("Reckon with {te} % from now on", { te: this.te.text });
  }

  async #weigh() {
    const form = new Map(this.form), note = byId("w-left_mass");
    form.delete("left_mass");
    form.delete("left_mass.unit");
    if (this.box.value.trim() !== "") form.set("left_mass", this.box.value.trim()).set("left_mass.unit", this.unit.value);
    const { wrong, form: whole } = await check(form);
    note.hidden = !wrong;
    note.textContent = wrong ? sentence(wrong.problems[0]) : "";
    if (wrong) return;
    try {
      await keep(whole, this.entry);
    } catch (error) {
      if (!(error instanceof Conflict)) throw error;
      notify(say("This entry has been changed in another tab since it was shown. Open it again to see it as it is now."));
    }
  }

  change() {
    edit("id=" + this.entry.id);
  }

  next() {
    remember(this.te);
  }

  remove() {
    const name = this.cell.product.text;
    takeOut(this.entry, say("{name} of {day} is out of the log.", { name, day: this.entry.day }));
  }
}
