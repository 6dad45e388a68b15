// The timelines: the day by painter and place, and by job. Each scrolls sideways in its own frame where it is wider than
// the phone. A bar opens what can be done with its step, and in the first of them it can be moved.
import { byId, el } from "./dom.js";
import { Mover } from "./day-move.js";
import { inPlan, scaleOf, stepsOf } from "./day-steps.js";
import { picture } from "./picture.js";
import { store } from "./state.js";
import { say } from "./words.js";

const mostFitting = 350; // of a picture's own measure that is made to fit a phone; a wider one scrolls
const near = 24; // CSS pixels from a bar that still touch it: a glove is wide, and a coat can be short

export class Timelines {
  #root = byId("day-timeline");
  #act; // { open(of, says), drop(of, along), keep(is) }
  #frames = new Map(); // by key: { frame, drawn, svg, steps }
  #report;
  #moving = false;
  #now;

  constructor(main, act) {
    this.#act = act;
    for (const frame of this.#root.querySelectorAll("[data-picture]")) {
      const key = frame.dataset.picture;
      this.#frames.set(key, { frame });
      this.#root.querySelector(`[data-equal="${key}"]`).append(main.querySelector(`[data-out="${key}"]`));
      frame.addEventListener("click", (event) => this.#tap(key, event));
    }
    for (const radio of this.#root.querySelectorAll("input[type=radio]")) {
      radio.checked = radio.value === (store.get("day-view") || "by_place");
      radio.addEventListener("change", () => {
        store.set("day-view", radio.value);
        this.#choose();
      });
    }
    this.#choose();
    main.addEventListener("answer", ({ detail }) => {
      this.#report = detail.report;
      this.#draw();
    });
  }

  /** Marks the present time, in minutes after midnight; undefined for none. */
  now(minutes) {
    this.#now = minutes;
    for (const key of this.#frames.keys()) this.#mark(key);
  }

  #choose() {
    const chosen = this.#root.querySelector("input[type=radio]:checked").value;
    for (const half of this.#root.querySelectorAll("[data-half]")) half.hidden = half.dataset.half !== chosen;
  }

  // A bar in the hand stays where it is; what has come meanwhile is drawn when it is let go.
  #draw() {
    if (this.#moving) return;
    this.#root.hidden = this.#report.pictures.length === 0;
    const names = this.#report.lists.find((l) => l.key === "jobs_done")?.rows.map((row, i) => el("span", {}, el("b", {}, String(i + 1)), " ", row[0].text)) ?? [];
    this.#root.querySelector(".day-jobs").replaceChildren(...names);
    for (const [key, f] of this.#frames) {
      const p = this.#report.pictures.find((p) => p.key === key), from = JSON.stringify(p);
      if (f.drawn === from) continue;
      f.drawn = from;
      const focused = f.frame.contains(document.activeElement) ? document.activeElement.dataset.of : undefined;
      f.frame.replaceChildren(...(p ? [this.#drawn(key, f, p)] : []));
      this.#mark(key);
      if (focused) f.frame.querySelector(`[tabindex][data-of="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
    }
  }

  #drawn(key, f, p) {
    f.steps = stepsOf(this.#report, key);
    const drawn = picture(p);
    f.svg = drawn.querySelector("svg");
    f.svg.setAttribute("role", "group");
    nameParts(f.svg);
    const bars = [...f.svg.querySelectorAll("rect[data-of]")];
    f.steps.forEach((step, i) => {
      step.bar = bars[i];
      step.parts = [bars[i], ...f.svg.querySelectorAll(`[data-nth="${i}"]`)];
    });
    drawn.classList.add("day-picture");
    for (const text of f.svg.querySelectorAll("text")) {
      text.setAttribute("aria-hidden", "true");
      if (text.matches(".ink-spray:not(.done) + text, .ink-spray:not(.done) + circle + text")) text.classList.add("on-spray");
    }
    if (p.width <= mostFitting) drawn.classList.add("fitting");
    const along = key === "by_place" ? "y" : "x";
    if (along === "y") {
      f.svg.setAttribute("width", p.width);
      f.svg.setAttribute("height", p.height);
      this.#nameBars(f.steps);
      new Mover(f.svg, f.steps, scaleOf(f.steps, along), { ...this.#act, open: (step) => this.#open(step), moving: (is) => this.#hand(is) });
    }
    f.scale = f.steps.length > 0 ? scaleOf(f.steps, along) : undefined;
    // Bars in the order of time, above the ground and beneath the names.
    f.steps.toSorted((a, b) => a.start - b.start).forEach(({ bar }) => f.svg.append(bar));
    f.svg.append(...f.svg.querySelectorAll("text, circle, .rule:not(.ink-grid)"));
    return drawn;
  }

  // A step has bars in several columns: its painter's, and the place's. The first of them stands for all.
  #nameBars(steps) {
    const named = new Set();
    for (const { bar, main, of, says, from, until } of steps) {
      if (!main || named.has(of)) {
        bar.setAttribute("aria-hidden", "true");
        continue;
      }
      named.add(of);
      for (const [name, value] of Object.entries({ role: "button", tabindex: "0", "aria-label": say("{step}, {from} to {until}", { step: says, from, until }) })) bar.setAttribute(name, value);
    }
  }

  #hand(is) {
    if (is !== this.#moving) this.#act.keep(is);
    this.#moving = is;
    if (!is) this.#draw();
  }

  #tap(key, event) {
    const step = this.#at(this.#frames.get(key), event);
    if (step) this.#open(step);
  }

  #open(step) {
    this.#act.open(step.of, step.main ? "" : say("{step}, {from} to {until}", { step: step.says, from: step.from, until: step.until }));
  }

  // The bar that a finger means: the one beneath it, or else the nearest.
  #at({ svg, steps }, { target, clientX: x, clientY: y }) {
    const hit = steps?.find((s) => s.bar === target);
    if (hit || !svg?.contains(target)) return hit;
    const far = ({ bar }) => {
      const { left, right, top, bottom } = bar.getBoundingClientRect();
      return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
    };
    const best = steps.reduce((a, b) => (far(b) < far(a) ? b : a), steps[0]);
    return best && far(best) <= near ? best : undefined;
  }

  #mark(key) {
    const f = this.#frames.get(key), { svg, scale, frame } = f;
    frame.querySelector(".present")?.remove();
    if (this.#now === undefined || !scale || !svg) return;
    const [width, height] = svg.getAttribute("viewBox").split(" ").slice(2).map(Number);
    const down = key === "by_place", end = down ? height : width;
    const place = scale.place(inPlan(this.#now, f.steps));
    if (place < 0 || place > end) return;
    const line = document.createElementNS(svg.namespaceURI, "path");
    line.setAttribute("class", "present rule");
    line.setAttribute("d", down ? `M0 ${place}h${width}M0 ${place - 5}v10l7 -5z` : `M${place} 12v${height}M${place - 5} 12h10l-5 7z`);
    svg.append(line);
  }
}

// Gives what is drawn on a bar, after it, the number of its bar.
function nameParts(svg) {
  let n = -1;
  for (const e of svg.children) {
    if (e.matches("rect[data-of]")) n++;
    else if (e.matches("text.ink-step, circle")) e.dataset.nth = n;
  }
}

/** The button of a bar, for those who go by keys. */
export const barOf = (of) => byId("day-timeline").querySelector(`[tabindex][data-of="${CSS.escape(of)}"]`);
