// A table of the form: each row is a sentence that opens for editing in place.
import { copy, fill } from "./dom.js";
import { say } from "./words.js";

/** The row numbers that the core reads. */
export const rowPattern = /^[1-9]\d{0,4}$/;

export class Table {
  #root;
  #form;
  #list;
  #blank; // the template of a row's fields
  #removed; // what the last removal took, for Undo

  constructor(root, form) {
    this.key = root.dataset.table;
    this.optional = root.dataset.optional !== undefined;
    this.#root = root;
    this.#form = form;
    this.#list = root.querySelector(".rows");
    this.#blank = root.querySelector(".row-edit").content;
    root.querySelector(".add").addEventListener("click", () => this.add());
    this.#list.addEventListener("click", (event) => this.#act(event.target));
    // Toggle does not bubble, so it is caught on its way down.
    this.#list.addEventListener("toggle", (event) => this.#toggled(event.target), true);
  }

  get items() {
    return [...this.#list.querySelectorAll(":scope > .row")];
  }

  /** Makes the rows that the values have. Of a link with far more than a table takes, which the core says, the first are
   * enough to see that. */
  load() {
    const numbers = new Set();
    for (const key of this.#form.values.keys()) {
      const [table, n, rest] = key.split(".");
      if (table === this.key && rest !== undefined && rowPattern.test(n)) numbers.add(Number(n));
    }
    const sorted = [...numbers].sort((a, b) => a - b).slice(0, Number(this.#root.dataset.most) + 100);
    this.#list.replaceChildren(...sorted.map((n) => this.#item(`${this.key}.${n}`)));
    this.#count();
  }

  /** Adds an empty row and opens it. */
  add({ focus = true } = {}) {
    const item = this.#item(`${this.key}.new`);
    this.#list.append(item);
    this.#renumber();
    this.open(item);
    if (focus) item.querySelector(".edit input, .edit select")?.focus();
  }

  /** Opens the row that holds a key such as "part.2.length"; for the table's own key, the first, or a new one. */
  reveal(key) {
    const item = this.items.find((i) => key.startsWith(i.dataset.row + ".")) ?? (key === this.key ? this.items[0] : undefined);
    if (item) this.open(item);
    else if (key === this.key) this.add();
  }

  open(item) {
    const edit = item.querySelector(".edit");
    if (!edit.firstChild) {
      const fields = this.#blank.cloneNode(true);
      rename(fields, `${this.key}.0.`, item.dataset.row + ".");
      edit.append(fields);
      this.#form.show(edit);
    }
    item.querySelector("details").open = true;
  }

  /** Puts each row into its sentence, or says what it lacks. */
  describe(report) {
    const sentences = new Map(report.rows.map((r) => [r.row, r.text]));
    for (const item of this.items) {
      const own = report.problems.filter((p) => p.field.startsWith(item.dataset.row + "."));
      fill(item, { says: sentences.get(item.dataset.row) ?? this.#name(item), lacks: this.#lacks(own) });
      item.classList.toggle("lacking", own.length > 0);
    }
  }

  #item(row) {
    const item = copy("part-row");
    item.dataset.row = row;
    fill(item, { says: this.#root.dataset.rowName });
    return item;
  }

  #toggled(details) {
    const item = details.parentElement;
    if (details.open) {
      this.open(item);
    } else {
      item.querySelector(".edit").replaceChildren(); // a long table stays light
    }
    this.#form.changed();
  }

  // The first words of a row are what the person calls it.
  #name(item) {
    const words = this.#blank.querySelector(".field.words")?.dataset.field.split(".").pop();
    const kind = this.#root.dataset.rowName;
    return this.#form.values.get(`${item.dataset.row}.${words}`) ?? kind[0].toUpperCase() + kind.slice(1);
  }

  #lacks(problems) {
    const wrong = problems.find((p) => p.code !== "missing");
    if (wrong) return wrong.message;
    const labels = problems.map((p) => this.#blank.querySelector(`[data-field="${this.key}.0.${CSS.escape(p.field.split(".").pop())}"]`)?.dataset.label);
    if (labels.length === 0) return "";
    if (labels.length <= 3) return say("Still needed: {fields}", { fields: labels.join(", ") });
    return say("Still needed: {fields}, and {n} more", { fields: labels.slice(0, 2).join(", "), n: labels.length - 2 });
  }

  #act(target) {
    const item = target.closest("li");
    const doing = target.dataset.do;
    if (doing === "undo") return this.#undo(item);
    if (!doing) return;
    const items = this.items;
    const at = items.indexOf(item);
    if (doing === "close") {
      item.querySelector("details").open = false;
      item.querySelector("summary").focus();
      return;
    }
    if (doing === "up") items[at - 1]?.before(item);
    if (doing === "down") items[at + 1]?.after(item);
    if (doing === "copy") this.#insert(this.#form.under(item.dataset.row + "."), (twin) => item.after(twin));
    if (doing === "remove") this.#remove(item);
    this.#renumber();
    if (doing === "up" || doing === "down") target.focus();
  }

  #insert(values, place) {
    const item = this.#item(`${this.key}.new`);
    this.#form.give(`${this.key}.new.`, values);
    place(item);
    return item;
  }

  #remove(item) {
    this.#removed?.mark.remove();
    const mark = copy("part-undo");
    fill(mark, { says: say("{name} removed.", { name: this.#name(item) }) });
    this.#removed = { mark, values: this.#form.take(item.dataset.row + ".") };
    item.replaceWith(mark);
    mark.querySelector("button").focus();
  }

  #undo(mark) {
    const item = this.#insert(this.#removed.values, (back) => mark.replaceWith(back));
    this.#removed = undefined;
    this.#renumber();
    item.querySelector("summary").focus();
  }

  // Rows are numbered as they stand, because that is the order in which the core takes them.
  #renumber() {
    const items = this.items;
    const taken = items.map((item) => this.#form.take(item.dataset.row + "."));
    items.forEach((item, i) => {
      const row = `${this.key}.${i + 1}`;
      rename(item, item.dataset.row + ".", row + ".");
      item.dataset.row = row;
      this.#form.give(row + ".", taken[i]);
    });
    // While names were changing two rows may have shared one, and a browser ticks one radio button of a name.
    for (const item of items) this.#form.show(item);
    this.#count();
    this.#form.changed();
  }

  #count() {
    this.items.forEach((item, i) => fill(item, { number: String(i + 1) }));
    this.#root.querySelector(".add").disabled = this.items.length >= Number(this.#root.dataset.most);
  }
}

const named = ["name", "id", "for", "aria-describedby", "data-of", "data-field"];

// rename moves the fields within a part to another row.
function rename(root, from, to) {
  if (from === to) return;
  for (const e of root.querySelectorAll("*")) {
    for (const attribute of named) {
      const text = e.getAttribute(attribute);
      if (text?.includes(from)) e.setAttribute(attribute, text.replaceAll(from, to));
    }
  }
}
