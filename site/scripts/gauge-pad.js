// Keys for readings: on the screen, on a keyboard, and a column pasted in. What is keyed stays text; the core reads it.
import { byId } from "./dom.js";

const longest = 8; // characters of one reading

/** The readings in pasted text: one to a line, or parted by tabs, semicolons or spaces. */
export const column = (text) => text.split(/[\r\n\t;]+|\s+(?=[\d.,+-])/).map((s) => s.trim()).filter((s) => s !== "" && s.length < 40);

export class Pad {
  #now = byId("gauge-now");
  #act;

  constructor(main, act) {
    this.#act = act;
    const pad = byId("gauge-pad");
    pad.addEventListener("mousedown", (event) => event.target.closest("button") && event.preventDefault()); // the focus stays where it was
    pad.addEventListener("click", ({ target }) => this.#press(target.closest("button")));
    document.addEventListener("keydown", (event) => this.#key(event));
    document.addEventListener("paste", (event) => {
      if (typing(event.target)) return;
      event.preventDefault();
      act.add(column(event.clipboardData.getData("text")));
    });
    byId("gauge-take").addEventListener("click", () => {
      act.add(column(byId("gauge-text").value));
      byId("gauge-text").value = "";
      byId("gauge-column").open = false;
    });
  }

  #press(button) {
    if (!button) return;
    const { key, do: doing } = button.dataset;
    if (key) this.#type(key);
    if (doing === "back") this.#set(this.#now.textContent.slice(0, -1));
    if (doing === "enter") this.#enter();
    if (doing === "undo") this.#undo();
  }

  #key(event) {
    if (typing(event.target) || event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
    const onButton = event.target.closest?.("button, a, summary");
    if (/^[0-9.,]$/.test(event.key)) this.#type(event.key);
    else if (event.key === "Backspace") this.#set(this.#now.textContent.slice(0, -1));
    else if (event.key === "Enter" && !onButton) this.#enter();
    else return;
    event.preventDefault();
  }

  // One mark for decimals is enough.
  #type(key) {
    const text = this.#now.textContent;
    if (text.length >= longest || (/[.,]/.test(key) && /[.,]/.test(text))) return;
    this.#set(text + key);
  }

  // What is half keyed is taken back first.
  #undo() {
    if (this.#now.textContent) this.#set("");
    else this.#act.undo();
  }

  #enter() {
    const text = this.#now.textContent;
    if (!/[0-9]/.test(text)) return;
    this.#set("");
    this.#act.add([text]);
    navigator.vibrate?.(10);
  }

  #set(text) {
    this.#now.textContent = text;
  }
}

const typing = (e) => e.matches?.("input:not([type=radio], [type=checkbox]), select, textarea");
