// The learner's page: the tasks of a set one at a time, each judged at once.
import { formText } from "./address.js";
import { byId, el } from "./dom.js";
import { readLink, readSet, settingsOf, task as askTask } from "./exercise-core.js";
import { drop, keeps } from "./exercise-keep.js";
import { keepRecord, mergeRecord, readRecord, tell, tried } from "./exercise-record.js";
import { Slip } from "./exercise-slip.js";
import { TaskView } from "./exercise-task.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { whole } from "./share.js";
import { say } from "./words.js";

export async function open() {
  addEventListener("hashchange", () => location.reload());
  const text = formText(), link = readLink(text);
  const known = new Map([...document.querySelectorAll("#calculators li")].map((li) => [li.dataset.of, li]));
  const set = await readSet(link).catch((error) => ({ problems: [{ message: error.message, fix: "" }], tasks: [] }));
  const problems = set.problems.map((p) => (p.fix ? sentence(p) : p.message));
  for (const { of } of set.tasks) {
    const says = say("There is no calculator “{name}” here to make exercises of. The link may be newer than this page, or damaged.", { name: of });
    if (!known.has(of) && !problems.includes(says)) problems.push(says);
  }
  if (problems.length > 0) return refuse(problems);
  if (!whole(text, link, () => true)) notify(say("This link is incomplete or damaged: some of it could not be read. Ask for it again."));
  await new Exercises(link, set, known).open();
}

function refuse(problems) {
  const box = byId("exercise-none");
  box.querySelector("ul").replaceChildren(...problems.map((p) => el("li", {}, p)));
  box.hidden = false;
}

const letters = "abcdefghjkmnpqrstuvwxyz23456789"; // none that is read as another

const freshSeed = () => [...crypto.getRandomValues(new Uint8Array(5))].map((b) => letters[b % letters.length]).join("");

class Exercises {
  #link;
  #set;
  #known;
  #record;
  #view = new TaskView();
  #slip;
  #turn = 0; // of the task asked for last

  constructor(link, set, known) {
    this.#link = link;
    this.#set = set;
    this.#known = known;
    this.#record = readRecord(set.id, set.tasks.length);
    // Opening a link keeps nothing; the tab's own history has the seed for when the page is loaded anew.
    this.#record.seed = set.seed || this.#record.seed || history.state?.seed || freshSeed();
    history.replaceState({ ...history.state, seed: this.#record.seed }, "");
    this.#slip = new Slip({ title: link.get("title") ?? "", record: this.#record, keep: () => this.#keep() });
  }

  async open() {
    await this.#refill();
    const title = this.#link.get("title");
    if (title) document.title = byId("exercise-title").textContent = title;
    byId("exercise-note").textContent = this.#link.get("note") ?? "";
    byId("exercise-note").hidden = !this.#link.has("note");
    byId("exercise-work").hidden = false;
    byId("task-form").addEventListener("submit", (event) => {
      event.preventDefault();
      this.#answer();
    });
    this.#view.typed(() => {
      Object.assign(this.#record, this.#view.answer);
      this.#keep();
    });
    byId("task-other").addEventListener("click", () => this.#again());
    byId("task-again").addEventListener("click", () => this.#again());
    byId("task-next").addEventListener("click", () => this.#next());
    byId("slip-show").addEventListener("click", () => this.#slip.show());
    byId("start-again").addEventListener("click", () => this.#startAgain());
    if (!keeps()) this.#warn();
    tell(this.#set.id, this.#record);
    this.#show();
    addEventListener("storage", ({ key }) => key?.endsWith("exercise:" + this.#set.id) && this.#others());
  }

  // The same set is done in another tab as well.
  #others() {
    const { begun } = this.#record, done = this.#given;
    mergeRecord(this.#set.id, this.#record);
    if (this.#record.begun !== begun || this.#given !== done) this.#show();
    else this.#marks();
  }

  get #slot() {
    return this.#record.slots[this.#record.at];
  }

  // The answer to the numbers on the page, if there is one.
  get #given() {
    return this.#slot.tries.find((t) => t.draw === this.#slot.draw);
  }

  #settings() {
    const { at, seed } = this.#record;
    return settingsOf(this.#link, this.#set.tasks[at].row, `${seed}/${at + 1}`, this.#slot.draw);
  }

  // A course keeps answers alone: what the slip says of them is worked out again.
  async #refill() {
    for (const [i, slot] of this.#record.slots.entries()) {
      for (const [k, given] of slot.tries.entries()) {
        if (given.given) continue;
        const { of, row } = this.#set.tasks[i], { draw, answer, unit } = given, li = this.#known.get(of);
        const settings = settingsOf(this.#link, row, `${this.#record.seed}/${i + 1}`, draw).set("answer", answer || " ").set("answer.unit", unit);
        const task = answer ? await askTask(li.dataset.core, of, settings).catch(() => ({})) : {};
        slot.tries[k] = task.judged ? tried(task, li.textContent, given) : { yours: "—", right: "—", title: li.textContent, label: "", ...given, given: [] };
      }
    }
  }

  // Shows the task at hand, with its result where it has been answered.
  async #show(focus) {
    const turn = ++this.#turn, { of } = this.#set.tasks[this.#record.at], li = this.#known.get(of), given = this.#given;
    this.#marks();
    const settings = this.#settings();
    if (given) settings.set("answer", given.answer).set("answer.unit", given.unit);
    try {
      const task = await askTask(li.dataset.core, of, settings);
      if (turn !== this.#turn) return;
      this.#view.show(task, { n: this.#record.at + 1, of: this.#record.slots.length, page: li.dataset.page });
      if (!given && this.#record.typed) this.#view.answer = this.#record;
      if (focus) byId("task").focus();
    } catch (error) {
      notify(error.message);
    }
  }

  async #answer() {
    const { of } = this.#set.tasks[this.#record.at], slot = this.#slot, draw = slot.draw, { typed, unit } = this.#view.answer;
    if (this.#given) return;
    const settings = this.#settings().set("answer", typed || " ").set("answer.unit", unit);
    try {
      const task = await askTask(this.#known.get(of).dataset.core, of, settings);
      if (slot !== this.#slot || draw !== slot.draw || this.#given) return;
      if (task.problems.length > 0) return this.#view.wrong(sentence(task.problems[0]));
      slot.tries.push(tried(task, this.#known.get(of).textContent, { when: Date.now(), draw, answer: typed, unit }));
      this.#record.typed = this.#record.unit = "";
      this.#keep();
      if (slot.tries.length === 1) tell(this.#set.id, this.#record);
      this.#view.show(task, { n: this.#record.at + 1, of: this.#record.slots.length, page: this.#known.get(of).dataset.page });
      this.#marks();
      byId("task-result").focus({ preventScroll: true }); // the box that had it is gone
      byId("task-result").scrollIntoView({ block: "nearest" });
    } catch (error) {
      notify(error.message);
    }
  }

  // Other numbers for the same task. Only the first answer to it counts.
  #again() {
    this.#slot.draw++;
    this.#record.typed = "";
    this.#keep();
    this.#show(true);
  }

  #next() {
    const { slots, at } = this.#record, open = (slot) => slot.tries.length === 0;
    const next = [...slots.keys()].map((i) => (at + 1 + i) % slots.length).find((i) => open(slots[i]));
    if (next === undefined) this.#slip.show();
    else this.#go(next);
  }

  #go(n) {
    this.#record.at = n;
    this.#record.typed = "";
    this.#keep();
    this.#show(true);
  }

  #marks() {
    const { slots, at } = this.#record;
    byId("tasks").replaceChildren(...slots.map((slot, i) => {
      const judged = slot.tries[0]?.judged ?? "open";
      const states = { right: say("right"), close: say("close"), off: say("off"), open: say("not answered yet") };
      const button = el("button", { type: "button", class: "mark-" + judged, "aria-label": say("Task {n}: {state}", { n: i + 1, state: states[judged] }) }, String(i + 1));
      if (i === at) button.setAttribute("aria-current", "step");
      button.addEventListener("click", () => this.#go(i));
      return el("li", {}, button);
    }));
    this.#slip.refresh();
  }

  #keep() {
    if (!keepRecord(this.#set.id, this.#record)) this.#warn();
  }

  #warn() {
    notify(say("This browser keeps nothing. Your answers are lost when you close the page: print the slip or copy it first."));
  }

  #startAgain() {
    const before = JSON.stringify(this.#record), { id } = this.#set;
    drop(id);
    Object.assign(this.#record, { ...readRecord(id, this.#record.slots.length), seed: this.#set.seed || freshSeed(), begun: Date.now(), name: this.#record.name, typed: "" });
    this.#slip.hide();
    this.#keep();
    this.#show(true);
    notify(say("Started again from the first task."), { [say("Put my answers back")]: () => { Object.assign(this.#record, JSON.parse(before), { begun: Date.now() }); this.#keep(); this.#show(); }, [say("Close")]: undefined });
  }
}
