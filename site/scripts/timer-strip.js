// The line at the head of every page that shows which timer comes next, and leads to all of them.
import { el } from "./dom.js";
import { last, timeOfDay } from "./clock.js";
import { look } from "./timer-keeper.js";
import { ready } from "./timer-sound.js";
import { called, left, markName, nextMark, standing } from "./timer-words.js";
import { say } from "./words.js";

let opened;

/** Shows the line, once. listen is called with the timers at every look at the clock. */
export function open(listen = () => {}) {
  listeners.add(listen);
  return (opened ??= begin());
}

const listeners = new Set();
const what = el("span", { class: "strip-what" }), count = el("b", { class: "strip-count" }), more = el("span", { class: "strip-more" });
const link = el("a", { class: "strip-link", href: "timers.html" }, what, " ", count, " ", more);
const strip = el("aside", { class: "strip", "aria-label": say("Timers"), hidden: "" }, link);
const spoken = el("p", { class: "unseen", role: "status" });

function begin() {
  document.querySelector(".top").after(strip);
  document.body.append(spoken);
  return look((list) => {
    show(list);
    for (const listen of listeners) listen(list);
  }, (text) => { spoken.textContent = text; });
}

function show(list) {
  strip.hidden = list.length === 0 || document.querySelector("main").dataset.module === "timers";
  if (strip.hidden) return;
  const now = Date.now();
  const { t, mark } = leading(list, now);
  const level = mark.at > now && mark.at - now > last ? "" : standing(t, now).level;
  strip.className = `strip ${level}${Math.abs(mark.at - now) < last ? " last" : ""}`;
  set(what, called(t));
  set(count, left(mark, now));
  set(more, [markName(t.kind, mark.is), ...others(list.filter((x) => x !== t), now), ready() ? "" : say("touch for sound")].filter(Boolean).join(" · "));
}

// How many others there are, and when the next of them is up.
function others(list, now) {
  const next = list.flatMap((t) => nextMark(t, now)?.at ?? []), over = list.length - next.length;
  return [next.length > 0 ? say("{n} more, next {time}", { n: next.length, time: timeOfDay(Math.min(...next), now) }) : "", over > 0 ? say("{n} over", { n: over }) : ""];
}

// What has just rung, else what comes next, else what rang last.
function leading(list, now) {
  const marks = list.flatMap((t) => t.marks.map((mark) => ({ t, mark })));
  const passed = marks.filter(({ mark }) => mark.at <= now).sort((a, b) => b.mark.at - a.mark.at);
  const coming = marks.filter(({ mark }) => mark.at > now).sort((a, b) => a.mark.at - b.mark.at);
  return passed[0] && now - passed[0].mark.at < last ? passed[0] : (coming[0] ?? passed[0]);
}

const set = (e, text) => { if (e.textContent !== text) e.textContent = text; };
