// The trainer's page: a calculator in a frame as it will stand on another page, and the lines of HTML for that. What is
// filled in, is filled in in the frame itself, which tells what it holds.
import { formText, withForm } from "./address.js";
import { byId, copy, el, fill, slot } from "./dom.js";
import { notify } from "./notices.js";
import { frameAddress, frameTag, scriptTag } from "./snippet.js";
import { parse, write } from "./state.js";
import { say } from "./words.js";

const settle = 250; // ms after the last change of an option before the frame is made anew
const mark = "frame.";

export function open() {
  const inOneFile = document.documentElement.classList.contains("in-one-file");
  byId("maker-nowhere").hidden = !inOneFile;
  byId("maker").hidden = inOneFile;
  if (!inOneFile) new Maker().open();
}

class Maker {
  #form = byId("form");
  #frame;
  #values = new Map(); // the form in the frame
  #lists = { lock: new Set(), hide: new Set() };
  #listed; // the fields that can be locked, as they stand here
  #height = 480;
  #timer;
  #of;

  open() {
    this.#read(parse(formText()));
    this.#form.addEventListener("submit", (event) => event.preventDefault());
    this.#form.addEventListener("input", (event) => this.#changed(event.target));
    addEventListener("message", (event) => this.#hear(event));
    for (const box of document.querySelectorAll(".maker textarea")) box.addEventListener("focus", () => box.select());
    document.querySelector(".maker").addEventListener("click", ({ target }) => this.#copy(target.closest("[data-copy]")?.dataset.copy));
    addEventListener("hashchange", () => location.reload());
    this.#make();
  }

  // The address has what was chosen, as a frame's own address has it.
  #read(link) {
    for (const [key, text] of [["language", document.documentElement.lang], ...link]) this.#put(key, text);
    for (const name of ["lock", "hide"]) this.#lists[name] = new Set((link.get(mark + name) ?? "").split(",").filter(Boolean));
    this.#values = new Map([...link].filter(([key]) => !key.startsWith(mark) && !["language", "sandbox"].includes(key)));
    this.#of = this.#form.elements[mark + "of"].value;
  }

  // What is not offered here stays as it was.
  #put(key, text) {
    const controls = [...this.#form.querySelectorAll(`[name="${CSS.escape(key)}"]`)];
    const offered = controls.flatMap((c) => (c.type === "radio" ? [c.value] : [...(c.options ?? [])].map((o) => o.value)));
    if (offered.length > 0 && !offered.includes(text)) {
      if (key === mark + "of") notify(say("There is no calculator “{name}” to show in this frame.", { name: text }));
      return;
    }
    for (const c of controls) {
      if (c.type === "radio") c.checked = c.value === text;
      else c.value = text;
    }
  }

  #option(name) {
    return this.#form.elements[name].value.trim();
  }

  get #show() {
    const options = new Map(["title", "theme", "answer", "working"].map((name) => [mark + name, this.#option(mark + name)]));
    for (const [name, keys] of Object.entries(this.#lists)) options.set(mark + name, [...keys].join(","));
    const given = new Map([...options].filter(([, text]) => text));
    const values = new Map(this.#values);
    values.delete("units");
    if (this.#option("units")) values.set("units", this.#option("units"));
    const of = write(new Map([[mark + "of", this.#option(mark + "of")]]));
    return [of, write(given), write(values)].filter(Boolean).join("&");
  }

  get #asked() {
    const of = this.#form.elements[mark + "of"];
    return {
      show: this.#show, language: this.#option("language"), sandbox: this.#option("sandbox"), height: this.#height,
      title: this.#option(mark + "title") || of.selectedOptions[0].textContent,
    };
  }

  #changed(control) {
    if (control.dataset.key) {
      for (const name of ["lock", "hide"]) this.#lists[name][control.value.includes(name) ? "add" : "delete"](control.dataset.key);
    }
    if (this.#option(mark + "of") !== this.#of) {
      this.#of = this.#option(mark + "of");
      this.#values = new Map(); // another form
      this.#lists = { lock: new Set(), hide: new Set() };
    }
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#make(), settle);
    this.#write();
  }

  #make() {
    const { show, language, sandbox, title } = this.#asked;
    this.#frame = el("iframe", { src: frameAddress(show, language), title, width: "100%", height: String(this.#height), ...(sandbox && { sandbox: "allow-scripts" }) });
    byId("maker-frame").replaceChildren(this.#frame);
    this.#write();
  }

  #hear({ source, origin, data }) {
    if (source !== this.#frame.contentWindow || ![location.origin, "null"].includes(origin) || data?.spraywright !== 1) return;
    if (data.kind === "height") this.#frame.height = this.#height = data.height;
    if (data.kind === "ready") this.#fields(data.fields);
    if (data.kind === "answer") this.#values = parse(data.form);
    this.#write();
  }

  // They stay as they are where the frame is another but the form is the same, and so does the focus in them.
  #fields(fields) {
    const listed = JSON.stringify(fields);
    if (listed === this.#listed) return;
    this.#listed = listed;
    byId("maker-fields").replaceChildren(...fields.map(({ key, label }) => {
      const line = fill(copy("maker-field"), { label }), select = line.querySelector("select");
      select.dataset.key = key;
      select.value = ["lock", "hide"].filter((name) => this.#lists[name].has(key)).join(" ");
      line.classList.toggle("within", key.includes("."));
      slot(line, "label").title = key;
      return line;
    }));
  }

  #write() {
    const asked = this.#asked;
    byId("maker-script").value = scriptTag(asked);
    byId("maker-tag").value = frameTag(asked);
    byId("maker-open").href = frameAddress(asked.show, asked.language);
    const more = write(new Map([["language", asked.language], ["sandbox", asked.sandbox]].filter(([, text]) => text)));
    history.replaceState(null, "", withForm(`${asked.show}&${more}`));
  }

  async #copy(what) {
    if (!what) return;
    const box = byId("maker-" + what);
    try {
      await navigator.clipboard.writeText(box.value);
      notify(say("Copied."));
    } catch {
      box.focus();
      box.select();
      notify(say("Copy it by hand: it is marked."));
    }
  }
}
