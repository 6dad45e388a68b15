// The form on the page and the values behind it. Values are texts by key, exactly as typed; nothing here reads a
// number. Rows of tables that are closed have values and no fields.
import { byId } from "./dom.js";
import { wantedUnit } from "./shop-units.js";

export class Form {
  values = new Map();
  touched = new Set(); // keys of fields that the person has left once
  #changed;
  #root;
  #retyped = []; // texts with a unit written after the number, as the core has read them

  constructor(root, changed) {
    this.#root = root;
    this.#changed = changed;
    root.addEventListener("submit", (event) => event.preventDefault());
    root.addEventListener("input", (event) => this.#take(event.target));
    root.addEventListener("change", (event) => this.#left(event.target));
    root.addEventListener("focusout", (event) => this.#touch(event.target));
    root.addEventListener("focusout", () => setTimeout(() => this.#applyRetyped()));
    root.addEventListener("keydown", (event) => this.#enter(event));
    for (const radio of unitSwitch()) radio.addEventListener("change", () => this.#switchUnits(radio.value));
  }

  /** What was typed into the page before its scripts were up: texts by key. */
  get early() {
    return [...this.#root.querySelectorAll('input[name]:not([type="radio"])')].filter((c) => c.value !== c.defaultValue).map((c) => [c.name, c.value]);
  }

  /** Says that the values have changed by other ways than typing. */
  changed() {
    this.#changed();
  }

  /** Fills in the fields within an element from the values. */
  show(scope = this.#root) {
    for (const c of scope.querySelectorAll("input[name], select[name]")) {
      const value = this.values.get(c.name) ?? c.dataset.default ?? "";
      if (c.matches(".unit")) c.value = this.#unit(c);
      else if (c.type === "radio") c.checked = c.value === value;
      else if (c.value !== value) c.value = value;
    }
    for (const radio of unitSwitch()) radio.checked = radio.value === (this.values.get("units") === "us" ? "us" : "si");
    this.ask(scope);
  }

  /** Shows the fields that the choices made ask for, and hides the others. */
  ask(scope = this.#root) {
    for (const e of scope.querySelectorAll("[data-when]")) {
      const row = e.closest(".row")?.dataset.row;
      const key = (row ? row + "." : "") + e.dataset.when;
      const asked = this.field(key);
      const given = this.values.get(key) ?? asked?.querySelector("[data-default]")?.dataset.default ?? "";
      e.hidden = !asked || asked.hidden || !e.dataset.in.split(" ").includes(given);
    }
  }

  /** The field with a key, with its label and notes; undefined where it is not on the page now. */
  field(key) {
    return this.#root.querySelector(`[data-field="${CSS.escape(key)}"]`) ?? undefined;
  }

  /** Takes out the values under a prefix, "part.2.", and returns them without it. */
  take(prefix) {
    const taken = this.under(prefix);
    for (const [rest] of taken) this.values.delete(prefix + rest);
    return taken;
  }

  under(prefix) {
    return [...this.values].filter(([key]) => key.startsWith(prefix)).map(([key, value]) => [key.slice(prefix.length), value]);
  }

  give(prefix, taken) {
    for (const [rest, value] of taken) this.values.set(prefix + rest, value);
  }

  /** Takes a unit that was written after a number for that field's unit, once the person has left the field. */
  retype(read = []) {
    this.#retyped = read;
    this.#applyRetyped();
  }

  #applyRetyped() {
    const ready = this.#retyped.filter(({ field }) => this.touched.has(field) && byId("f-" + field) && byId("f-" + field) !== document.activeElement);
    if (ready.length === 0) return;
    for (const { field, text, unit } of ready) {
      const box = byId("f-" + field), select = this.#unitSelect(field);
      if (select) select.value = unit;
      box.value = text;
      this.#takeValue(box);
    }
    this.#retyped = [];
    this.#changed();
  }

  #take(c) {
    if (!c.name) return;
    this.#retyped = [];
    if (c.matches(".unit")) this.#takeUnit(c);
    else this.#takeValue(c);
    this.ask(c.closest(".row") ?? this.#root);
    this.#changed();
  }

  #takeValue(c) {
    const unit = this.#unitSelect(c.name);
    const plain = !unit || unit.value === unit.dataset.own;
    if (c.value.trim() === "" || (c.value === c.dataset.default && plain)) this.values.delete(c.name);
    else this.values.set(c.name, c.value);
    // A number keeps the unit it was typed in, whatever the switch says later.
    if (unit && this.values.has(c.name)) this.#setUnit(unit);
  }

  #takeUnit(select) {
    const box = byId("f-" + select.dataset.of);
    if (box.value.trim() !== "") {
      this.#setUnit(select);
      // A figure that stood there at first is now in another unit, so it is no longer the one taken for granted.
      if (box.value !== box.dataset.default || select.value !== select.dataset.own) this.values.set(box.name, box.value);
      else this.values.delete(box.name);
    } else {
      this.values.set(select.name, select.value);
    }
    // Blank fields in the rows beneath ask in the same unit.
    for (const other of this.#root.querySelectorAll("select.unit[data-column]")) other.value = this.#unit(other);
  }

  #setUnit(select) {
    if (select.value === (this.values.get(select.dataset.column) ?? select.dataset.own)) this.values.delete(select.name);
    else this.values.set(select.name, select.value);
  }

  #unitSelect(name) {
    return this.#root.querySelector(`select.unit[data-of="${CSS.escape(name)}"]`);
  }

  // The unit is the field's own, or the one that a link gives its whole column. A blank field in a table takes over
  // the unit of the row before.
  #unit(select) {
    const { of, column, own, us } = select.dataset;
    const [table, row, key] = of.split(".");
    for (let name = of, n = Number(row); ; n--, name = `${table}.${n}.${key}`) {
      const chosen = this.values.get(name + ".unit") ?? this.values.get(column);
      if (chosen !== undefined) return chosen;
      if (this.values.has(name) || this.#prefilled(select)) return own;
      if (key === undefined || n <= 1) return wantedUnit(this.values, select) ?? (this.values.get("units") === "us" ? us : own);
    }
  }

  #prefilled(select) {
    return byId("f-" + select.dataset.of)?.dataset.default !== undefined;
  }

  #switchUnits(system) {
    this.values.set("units", system);
    for (const select of this.#root.querySelectorAll("select.unit")) {
      if (!this.values.has(select.dataset.of) && !this.#prefilled(select)) this.values.delete(select.name);
    }
    this.show();
    this.#changed();
  }

  #left(c) {
    // A figure taken for granted comes back when its box is left empty, because it is what the answer rests on.
    if (c.type === "text" && c.dataset.default !== undefined && c.value.trim() === "") {
      c.value = c.dataset.default;
      this.#take(c);
    }
  }

  #touch(c) {
    if (!c.name || c.matches(".unit") || this.touched.has(c.name)) return;
    this.touched.add(c.name);
    this.#changed();
  }

  #enter(event) {
    const c = event.target;
    if (event.key !== "Enter" || !c.matches("input, select") || event.isComposing) return;
    event.preventDefault();
    const next = this.#nextEmpty(c);
    if (next) next.focus();
    else byId("card").focus();
  }

  #nextEmpty(from) {
    const empty = (c) => {
      if (c.type === "radio") return c === this.#root.elements[c.name][0] && ![...this.#root.elements[c.name]].some((r) => r.checked);
      return c.value.trim() === "" && !c.matches(".unit");
    };
    for (const c of this.#root.querySelectorAll("input[name], select[name]")) {
      const after = from.compareDocumentPosition(c) & Node.DOCUMENT_POSITION_FOLLOWING;
      if (after && c.name !== from.name && c.getClientRects().length > 0 && empty(c)) return c;
    }
  }
}

const unitSwitch = () => document.querySelectorAll('.top input[name="units"]');
