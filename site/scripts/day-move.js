// Moving a bar of the timeline: drawn with a mouse, drawn with a finger that has rested on it, or by the arrow keys. The
// core decides what it means; here a bar only goes along with the hand and says the time of day beneath it.
import { writeTime } from "./clock.js";
import { byId } from "./dom.js";

const rest = 420; // ms that a finger rests on a bar before it takes it, so that scrolling stays scrolling
const still = 9; // CSS pixels that a resting finger may tremble
const begun = 5; // CSS pixels that a mouse goes before it draws a bar
const nearest = 5; // minutes, as the core rounds
const edge = 70; // CSS pixels from the top or the bottom of the screen, where the page scrolls along

export class Mover {
  #svg;
  #steps;
  #scale;
  #act; // { open(step), drop(of, along), moving(is) }
  #held; // { step, by, taken }, and of a hand { pointer, x, y, grab, timer }
  #moved = false; // since the hand came down

  constructor(svg, steps, scale, act) {
    this.#svg = svg;
    this.#steps = steps;
    this.#scale = scale;
    this.#act = act;
    svg.addEventListener("pointerdown", (event) => this.#down(event));
    svg.addEventListener("pointermove", (event) => this.#move(event));
    svg.addEventListener("pointerup", (event) => this.#up(event));
    svg.addEventListener("pointercancel", () => this.#let());
    svg.addEventListener("touchmove", (event) => this.#held?.taken && event.preventDefault(), { passive: false });
    svg.addEventListener("contextmenu", (event) => this.#held && event.preventDefault());
    // What ends a drag is no tap.
    svg.addEventListener("click", (event) => this.#moved && (event.stopPropagation(), (this.#moved = false)), true);
    svg.addEventListener("keydown", (event) => this.#key(event));
    svg.addEventListener("focusout", () => this.#held?.pointer === undefined && this.#let());
  }

  #down(event) {
    if (this.#held?.pointer !== undefined) return; // a second finger
    this.#let();
    this.#moved = false;
    const step = this.#steps.find((s) => s.bar === event.target);
    if (!step?.main || step.done || event.button > 0) return;
    this.#held = { step, pointer: event.pointerId, x: event.clientX, y: event.clientY, by: 0, grab: this.#place(event) };
    if (event.pointerType !== "mouse") this.#held.timer = setTimeout(() => this.#take(), rest);
  }

  #place({ clientX, clientY }) {
    return new DOMPoint(clientX, clientY).matrixTransform(this.#svg.getScreenCTM().inverse()).y;
  }

  #take() {
    if (!this.#held || !this.#svg.isConnected) return;
    this.#held.taken = true;
    this.#act.moving(true);
    try {
      this.#svg.setPointerCapture(this.#held.pointer);
    } catch {
      // The finger has just gone.
    }
    this.#show();
  }

  #move(event) {
    const h = this.#held;
    if (!h || h.pointer !== event.pointerId) return;
    const far = Math.hypot(event.clientX - h.x, event.clientY - h.y);
    if (!h.taken && h.timer) return void (far > still && this.#let());
    if (!h.taken && far > begun) this.#take();
    if (!h.taken) return;
    h.by = this.#place(event) - h.grab;
    this.#show();
    const { clientY: y } = event;
    if (y < edge || y > innerHeight - edge) scrollBy(0, y < edge ? -8 : 8);
  }

  #up(event) {
    const h = this.#held;
    if (!h || h.pointer === undefined || h.pointer !== event.pointerId) return;
    this.#moved = h.taken;
    if (h.taken && this.#minutes(h) !== h.step.start) this.#drop();
    else this.#let();
  }

  #drop() {
    const { step } = this.#held, at = this.#scale.place(this.#minutes(this.#held)); // of the time that was said
    this.#held = undefined;
    this.#act.drop(step.of, at).finally(() => {
      this.#clear(); // the bar goes back where the change was refused
      this.#act.moving(false);
    });
  }

  // Puts the bar back where the plan has it.
  #let() {
    if (!this.#held) return;
    clearTimeout(this.#held.timer);
    const { taken } = this.#held;
    this.#held = undefined;
    this.#clear();
    if (taken) this.#act.moving(false);
  }

  #key(event) {
    const step = this.#steps.find((s) => s.bar === event.target && s.main);
    if (!step || event.ctrlKey || event.metaKey || event.altKey) return;
    const way = { ArrowUp: -1, ArrowLeft: -1, ArrowDown: 1, ArrowRight: 1 }[event.key];
    const enters = event.key === "Enter" || event.key === " ";
    if (!way && !enters && !(event.key === "Escape" && this.#held)) return;
    event.preventDefault();
    if (enters && this.#held) return this.#drop();
    if (enters) return this.#act.open(step);
    if (!way) return this.#let();
    if (step.done) return;
    if (!this.#held) {
      this.#held = { step, by: 0, taken: true };
      this.#act.moving(true);
    }
    this.#held.by = (nearestTo(this.#minutes(this.#held) + way * nearest) - step.start) * this.#scale.per;
    this.#show();
    byId("spoken").textContent = writeTime(this.#minutes(this.#held));
  }

  // The time that the bar's top would stand for.
  #minutes({ step, by }) {
    const wanted = step.start + by / this.#scale.per;
    return Math.abs(wanted - step.start) < nearest / 2 ? step.start : nearestTo(wanted);
  }

  // Every bar of the step goes along.
  #show() {
    const { step, by } = this.#held;
    for (const { bar, parts, of, main } of this.#steps) {
      if (of !== step.of || !main) continue;
      for (const part of parts) part.setAttribute("transform", `translate(0 ${by})`);
      bar.classList.add("moving");
    }
    const { x, y, w } = step.shape;
    this.#svg.querySelector(".moving-time")?.remove();
    const text = document.createElementNS(this.#svg.namespaceURI, "text");
    for (const [name, value] of Object.entries({ class: "moving-time", x: x + w / 2, y: y + by - 5, "text-anchor": "middle" })) text.setAttribute(name, value);
    text.textContent = writeTime(this.#minutes(this.#held));
    this.#svg.append(text);
  }

  #clear() {
    for (const { bar, parts } of this.#steps) {
      for (const part of parts) part.removeAttribute("transform");
      bar.classList.remove("moving");
    }
    this.#svg.querySelector(".moving-time")?.remove();
  }
}

const nearestTo = (minutes) => Math.round(minutes / nearest) * nearest;
