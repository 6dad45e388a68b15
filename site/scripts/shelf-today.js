// Readings of the booth's air that were typed today: kept for the day, and offered to other forms with their time.
import { sameDay, timeOfDay } from "./clock.js";
import { el } from "./dom.js";
import { button, choosing, send } from "./shelf-ask.js";
import { against, fieldsOf } from "./shelf-fits.js";
import { lineOf } from "./shelf-line.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

const keys = ["air", "humidity", "panel", "air_speed"];
const name = "readings";

/** What was read today, with the moment of each reading as "air.at"; empty when nothing was. */
function readToday() {
  const read = parse(store.get(name));
  for (const key of keys) {
    if (read.has(key) && sameDay(Number(read.get(key + ".at")))) continue;
    for (const part of [key, key + ".unit", key + ".at"]) read.delete(part);
  }
  return read;
}

/** Keeps the readings typed on this page, and offers those typed on others. typed has the keys typed at so far. */
export function offerReadings(main, typed, latest) {
  const fields = fieldsOf(main.querySelector("#form"));
  if (!keys.some((key) => fields.has(key)) || fields.has("line_pressure")) return;
  const offer = el("p", { class: "read-today", hidden: "" });
  lineOf(main).prepend(offer);
  const follow = (detail) => {
    if (fields.has("humidity")) note(typed, detail); // a form that asks for none may mean another air than the booth's
    show(main, fields, offer, detail);
  };
  main.addEventListener("answer", ({ detail }) => follow(detail));
  if (latest()) follow(latest());
}

// Keeps what was typed here, once the core has read it without a fault.
function note(typed, { form, report }) {
  const wrong = new Set([...report.problems, ...report.retyped].map((p) => p.field));
  const good = keys.filter((key) => typed.has(key) && form.has(key) && !wrong.has(key));
  if (good.length === 0) return;
  const read = readToday();
  for (const key of good) {
    typed.delete(key);
    read.set(key, form.get(key));
    read.set(key + ".unit", form.get(key + ".unit") ?? "");
    read.set(key + ".at", String(Date.now()));
  }
  store.set(name, write(new Map([...read].filter(([, text]) => text))));
}

function show(main, fields, offer, { form }) {
  const read = readToday(), values = new Map([...read].filter(([key]) => !key.endsWith(".at")));
  const { blank, differs } = against(fields, values, form);
  const changes = [...blank, ...differs];
  offer.hidden = changes.length === 0;
  const key = changes.map((c) => `${c.key} ${c.old} ${c.new}`).join("|");
  if (offer.hidden || offer.dataset.key === key) return;
  offer.dataset.key = key;
  const at = timeOfDay(Math.min(...changes.map((c) => Number(read.get(c.key + ".at")))));
  const facts = changes.map((c) => `${c.field.dataset.label} ${c.new}`).join("; ");
  const fill = (ticked) => send(main, ticked, say("Filled in as read at {time}.", { time: at }));
  const act = differs.length > 0 ? button(say("Compare"), () => ask(offer, changes, fill)) : button(say("Fill in"), () => fill(changes));
  offer.replaceChildren(el("span", {}, say("Booth as read at {time}: {facts}.", { time: at, facts })), " ", act);
}

function ask(offer, changes, fill) {
  offer.parentElement.querySelector(".read-today + .shelf-panel")?.remove();
  const box = el("div", { class: "shelf-panel" });
  box.append(choosing(say("Here it says something else than what was read today:"), changes, (ticked) => {
    box.remove();
    fill(ticked);
  }, () => box.remove()));
  offer.after(box);
  box.querySelector("input").focus();
}
