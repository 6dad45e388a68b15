// The gauge bench: readings keyed in with one hand, judged by the core as they come in. The form is the one of the page
// that tells of all rules, and is kept with it.
import { formText, withForm } from "./address.js";
import { Card } from "./answer.js";
import { Core } from "./core.js";
import { byId, el } from "./dom.js";
import { Form } from "./form.js";
import { Pad } from "./gauge-pad.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { offerSharing } from "./share.js";
import { answered, parse, store, write } from "./state.js";
import { say } from "./words.js";

const kept = "form:gauge-readings", table = "reading.", column = "gauge_reading";
const most = 200;

export function open(main) {
  const core = new Core(main.dataset.core), card = new Card(), unit = byId("gauge-unit");
  const form = new Form(byId("form"), () => changed());
  let readings = []; // { text, unit }, in order
  let asking = false, again = false, told = false, chosen = false;

  function load(values) {
    const rows = [...new Set([...values.keys()].filter((key) => key.startsWith(table)).map((key) => key.split(".")[1]))].filter((n) => n !== column);
    const whole = values.get(`${table}${column}.unit`) ?? "";
    readings = rows.sort((a, b) => a - b).map((n) => ({ text: values.get(`${table}${n}.${column}`) ?? "", unit: values.get(`${table}${n}.${column}.unit`) ?? whole })).filter((r) => r.text);
    form.values = new Map([...values].filter(([key]) => !key.startsWith(table)));
    form.show();
    unit.value = readings.at(-1)?.unit || specified().value;
    byId("gauge-given").open = !form.values.has("dry_film");
    changed();
  }

  const values = () => new Map([...form.values, ...readings.flatMap((r, i) => [[`${table}${i + 1}.${column}`, r.text], ...(r.unit ? [[`${table}${i + 1}.${column}.unit`, r.unit]] : [])])]);

  // Readings are keyed in the unit of the film specified, unless another is chosen for them.
  const specified = () => byId("form").querySelector('select.unit[data-of="dry_film"]');

  function changed() {
    if (readings.length === 0 && !chosen) unit.value = specified().value;
    const text = write(values());
    if (!store.set(kept, text) && !told) {
      told = true;
      notify(say("This browser keeps nothing. Share the readings to save them."));
    }
    showReadings();
    ask().catch((error) => notify(error.message));
  }

  async function ask() {
    again = asking;
    if (asking) return;
    asking = true;
    try {
      do {
        again = false;
        show(await core.report("gauge-readings", write(new Map([["units.film", unit.value], ...values()]))));
      } while (again);
    } finally {
      asking = false;
    }
  }

  function show(report) {
    const wrong = report.problems.filter((p) => p.code !== "missing");
    const film = report.problems.some((p) => p.field === "dry_film" && p.code === "missing");
    byId("gauge-wrong").hidden = wrong.length === 0 && !(film && readings.length > 0);
    byId("gauge-wrong").textContent = wrong.length > 0 ? wrong.map((p) => (p.row ? say("{row}: {message}. {fix}.", p) : sentence(p))).join(" ") : say("Enter the dry film specified: the readings are judged against it.");
    if (film && readings.length > 0) byId("gauge-given").open = true;
    for (const field of byId("form").querySelectorAll("[data-field]")) {
      const p = wrong.find((q) => q.field === field.dataset.field), note = byId("w-" + field.dataset.field);
      note.hidden = !p;
      note.textContent = p ? sentence(p) : "";
    }
    const bad = new Set(wrong.map((p) => p.field.split(".")[1]));
    [...byId("gauge-readings").children].forEach((item, i) => item.classList.toggle("bad", bad.has(String(i + 1))));
    card.show(report);
    byId("gauge-spec").textContent = spec();
  }

  // What is specified, in the words of the form.
  function spec() {
    const film = byId("f-dry_film"), rule = byId("form").querySelector('[name="gauge_rule"]:checked')?.nextElementSibling ?? byId("f-gauge_rule")?.selectedOptions[0];
    const symbol = specified().selectedOptions[0].textContent ?? "";
    return film.value.trim() ? say("{film}, {rule}", { film: `${film.value.trim()}\u202f${symbol}`, rule: rule?.textContent ?? "" }) : "";
  }

  function showReadings() {
    const symbol = (r) => [...unit.options].find((o) => o.value === (r.unit || unit.dataset.own)).textContent;
    byId("gauge-readings").replaceChildren(...readings.map((r, i) => {
      const button = el("button", { type: "button", "aria-label": say("Take out reading {n}: {text}", { n: i + 1, text: `${r.text} ${symbol(r)}` }) }, r.text);
      button.addEventListener("click", () => takeOut(i));
      return el("li", {}, button);
    }));
    byId("gauge-count").textContent = String(readings.length);
    byId("gauge-empty").hidden = readings.length > 0;
    byId("gauge-paper").textContent = [spec(), ...readings.map((r) => r.text + "\u202f" + symbol(r))].filter(Boolean).join("; ");
  }

  function takeOut(i) {
    const before = [...readings];
    const [gone] = readings.splice(i, 1);
    changed();
    notify(say("Reading {text} taken out.", { text: gone.text }), { [say("Put it back")]: () => { readings = before; changed(); }, [say("Close")]: undefined });
  }

  function add(texts) {
    const room = most - readings.length;
    if (texts.length > room) notify(say("The bench holds {most} readings. Start again for another area.", { most }));
    byId("gauge-given").open = false; // the verdict needs the room
    readings.push(...texts.slice(0, room).map((text) => ({ text, unit: unit.value === unit.dataset.own ? "" : unit.value })));
    if (texts.length > 0) changed();
  }

  new Pad(main, { add, undo: () => readings.length > 0 && takeOut(readings.length - 1) });
  unit.addEventListener("change", () => {
    chosen = true;
    changed(); // answers are in the unit of the readings
  });
  offerSharing(byId("gauge-share"), values);
  byId("gauge-print").addEventListener("click", () => print());
  byId("gauge-clear").addEventListener("click", () => {
    const before = values();
    load(new Map([...form.values]));
    readings = [];
    changed();
    notify(say("The readings are gone; what is specified stays."), { [say("Put them back")]: () => load(before), [say("Close")]: undefined });
  });
  // A link takes the place of what is on the bench, which can be put back.
  function follow() {
    const link = formText(), mine = store.get(kept);
    if (!link.includes("=")) return false;
    load(parse(link));
    history.replaceState(null, "", withForm(""));
    if (answered(parse(mine)) && mine !== write(values())) notify(say("These readings came from a link."), { [say("Put mine back")]: () => load(parse(mine)), [say("Keep these")]: undefined });
    return true;
  }
  addEventListener("hashchange", follow);
  if (!follow()) load(parse(store.get(kept)));
}
