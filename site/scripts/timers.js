// The page of the timers: all that run, and one by hand.
import { byId } from "./dom.js";
import { Form } from "./form.js";
import { Problems } from "./problems.js";
import { store } from "./state.js";
import { Card } from "./timer-card.js";
import { offerWays } from "./timer-ways.js";
import { timeLeft } from "./timer-sheet.js";
import { wake } from "./timer-sound.js";
import { start } from "./timer-start.js";
import { open as openStrip } from "./timer-strip.js";

export function open(main) {
  offerWays();
  byHand(main);
  const cards = new Map();
  return openStrip((list) => show(list, cards));
}

function show(list, cards) {
  const box = byId("timers");
  byId("no-timers").hidden = list.length > 0;
  for (const [id, card] of cards) {
    if (list.some((t) => t.id === id)) continue;
    card.root.remove();
    cards.delete(id);
  }
  list.forEach((t, i) => {
    if (!cards.has(t.id)) cards.set(t.id, new Card());
    const card = cards.get(t.id);
    card.show(t, Date.now());
    // A card that is being worked in stays where it is.
    if (box.children[i] !== card.root && !box.contains(document.activeElement)) box.insertBefore(card.root, box.children[i] ?? null);
    else if (!card.root.isConnected) box.append(card.root);
  });
}

function byHand(main) {
  const form = new Form(byId("form"), () => {});
  const problems = new Problems(main, form, []);
  const name = byId("timer-name");
  const clear = () => {
    form.values = new Map(store.get("units") ? [["units", store.get("units")]] : []);
    form.touched.clear();
    name.value = "";
    form.show();
  };
  clear();
  byId("form").addEventListener("submit", async () => {
    wake();
    const report = await timeLeft(form.values);
    for (const p of report.problems) form.touched.add(p.field);
    problems.show(report);
    const timer = report.figures.find((f) => f.timer)?.timer;
    if (report.problems.length > 0) problems.jump(report.problems[0].field);
    if (report.problems.length > 0 || !timer) return;
    await start({ ...timer, of: name.value.trim() }, form.values);
    clear();
    byId("by-hand").open = false;
    byId("main").focus();
  });
  byId("by-hand").open = !store.get("timers");
}
