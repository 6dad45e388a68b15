// Puts a picture that the core has drawn on the page.
import { el } from "./dom.js";

const space = "http://www.w3.org/2000/svg";

function shape(tag, look, attributes, text) {
  const e = document.createElementNS(space, tag);
  e.setAttribute("class", "ink-" + look);
  for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, String(value));
  if (text !== undefined) e.textContent = text;
  return e;
}

const draw = {
  bar: (s) => shape("rect", s.look, { x: s.x, y: s.y, width: s.w, height: s.h }),
  rule: (s) => shape("path", s.look + " rule", { d: `M${s.x} ${s.y}l${s.w} ${s.h}` }),
  path: (s) => shape("polyline", s.look + " path", { points: s.points.join(" ") }),
  dot: (s) => shape("circle", s.look, { cx: s.x, cy: s.y, r: s.w }),
  label: (s) => shape("text", s.look, { x: s.x, y: s.y, "text-anchor": s.anchor }, s.text),
};

/** The picture with the sentence that says what it shows. */
export function picture(p) {
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("viewBox", `0 0 ${p.width} ${p.height}`);
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", p.says);
  svg.append(...p.shapes.filter((s) => draw[s.kind]).map((s) => {
    const e = draw[s.kind](s);
    if (s.of) e.dataset.of = s.of;
    return e;
  }));
  return el("figure", { class: "picture" }, svg, el("figcaption", {}, el("b", {}, p.title), " ", p.says));
}
