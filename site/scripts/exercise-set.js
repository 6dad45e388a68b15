// The trainer's page: a set of exercises put together, with the link that holds it. The address holds the set as well.
import { formText, shareable, withForm } from "./address.js";
import { byId, el } from "./dom.js";
import { readLink, readSet } from "./exercise-core.js";
import { Editor } from "./exercise-editor.js";
import { whyNot } from "./loading.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { linkTo } from "./share.js";
import { say } from "./words.js";

const ofSet = ["title", "note", "level", "units", "tasks", "seed", "right", "close", "pass"];

export function open() {
  new SetPage().open();
}

class SetPage {
  #form = byId("form");
  #list = byId("exercises");
  #editors = [];
  #link = new Map(); // the set as a learner's page reads it
  #turn = 0;

  open() {
    const link = readLink(formText());
    for (const key of ofSet) this.#put(key, link.get(key) ?? "");
    const rows = new Set([...link.keys()].map((key) => /^q\.\d+\./.exec(key)?.[0]).filter(Boolean));
    for (const row of rows) {
      const settings = new Map([...link].filter(([key]) => key.startsWith(row)).map(([key, text]) => [key.slice(row.length), text]));
      if (byId("plan-" + settings.get("of"))) this.#add(settings);
      else notify(say("There is no calculator “{name}” here to make exercises of. The link may be newer than this page, or damaged.", { name: settings.get("of") ?? "" }));
    }
    if (rows.size === 0) this.#add(new Map());
    this.#editors[0]?.open();
    this.#form.addEventListener("submit", (event) => event.preventDefault());
    this.#form.addEventListener("input", () => this.#changed());
    byId("exercise-add").addEventListener("click", () => this.#add(new Map(), true));
    byId("set-copy").addEventListener("click", () => this.#copy());
    byId("set-code").addEventListener("click", () => this.#code());
    for (const b of document.querySelectorAll("[data-course]")) b.addEventListener("click", () => this.#package(b.dataset.course));
    addEventListener("hashchange", () => {
      if (formText() !== this.#written) location.reload();
    });
    this.#changed();
  }

  #put(key, text) {
    for (const c of this.#form.querySelectorAll(`[name="${key}"]`)) {
      if (c.type === "radio") c.checked = c.value === text;
      else c.value = text;
    }
  }

  #add(settings, fresh) {
    const editor = new Editor(settings, { changed: () => this.#changed(), act: (what) => this.#act(editor, what), link: () => this.#link });
    this.#editors.push(editor);
    this.#list.append(editor.root);
    if (!fresh) return;
    for (const other of this.#editors) if (other !== editor) other.close();
    editor.open();
    editor.root.querySelector("select").focus();
    this.#changed();
  }

  #act(editor, what) {
    const at = this.#editors.indexOf(editor);
    if (what === "copy") this.#add(new Map(editor.settings), true);
    if (what === "up" && at > 0) {
      this.#editors.splice(at - 1, 0, ...this.#editors.splice(at, 1));
      const pressed = document.activeElement;
      this.#list.insertBefore(editor.root, this.#editors[at].root);
      pressed?.focus(); // moving it took the focus away
    }
    if (what === "remove") this.#remove(editor, at);
    this.#changed();
  }

  #remove(editor, at) {
    this.#editors.splice(at, 1);
    editor.root.remove();
    (this.#editors[Math.min(at, this.#editors.length - 1)]?.head ?? byId("exercise-add")).focus();
    notify(say("Exercise removed."), { [say("Undo")]: () => {
      this.#editors.splice(at, 0, editor);
      this.#list.insertBefore(editor.root, this.#list.children[at] ?? null);
      editor.head.focus();
      this.#changed();
    }, [say("Close")]: undefined });
  }

  #written;

  async #changed() {
    const link = new Map();
    for (const key of ofSet) {
      const c = this.#form.querySelector(`input[name="${key}"]:checked`) ?? this.#form.querySelector(`input[name="${key}"]:not([type="radio"])`);
      if (c?.value.trim()) link.set(key, c.value.trim());
    }
    this.#editors.forEach((editor, i) => {
      editor.number = i + 1;
      for (const [key, text] of editor.settings) link.set(`q.${i + 1}.${key}`, text);
    });
    this.#link = link;
    const here = linkTo(link);
    history.replaceState(null, "", here.startsWith("#") ? withForm(here.slice(1)) : here);
    this.#written = formText();
    byId("set-link").value = byId("set-open").href = this.learners;
    byId("set-picture").replaceChildren();
    for (const editor of this.#editors) editor.preview();
    const turn = ++this.#turn;
    const set = await readSet(link).catch(() => ({ problems: [] }));
    if (turn !== this.#turn) return;
    byId("set-problems").hidden = set.problems.length === 0;
    byId("set-problems").replaceChildren(...set.problems.map((p) => el("li", {}, sentence(p))));
  }

  // The same set on the learner's page.
  get learners() {
    return linkTo(this.#link).replace(/exercise-set(?=(\.html)?[#&])/, "exercises");
  }

  async #copy() {
    try {
      await navigator.clipboard.writeText(this.learners);
      notify(shareable ? say("Link copied. Whoever opens it gets the exercises.") : say("Copied without an address, because this file has none that others can open. Put it behind the address of any copy, of this file or of the site."));
    } catch {
      byId("set-link").focus();
      byId("set-link").select();
      notify(say("Copy it by hand: the link holds the whole set."));
    }
  }

  async #package(kind) {
    try {
      const { savePackage } = await import("./course-package.js");
      await savePackage(kind, this.#link, (of) => byId("plan-" + of).dataset.core, byId("course-says"));
    } catch (error) {
      notify(whyNot(error));
    }
  }

  async #code() {
    try {
      const { codeOf, codePicture } = await import("./share-code.js");
      const { picture, rulings } = await codeOf(this.learners);
      byId("set-picture").replaceChildren(...(picture ? [codePicture(picture)] : rulings.map((r) => el("p", {}, say("{why}. {what}.", { why: r.why, what: r.do })))));
    } catch (error) {
      notify(whyNot(error));
    }
  }
}
