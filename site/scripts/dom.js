// Small helpers to build and fill in parts of the page. Text goes in as text, never as markup.

export const byId = (id) => document.getElementById(id);

/** An element with attributes and children; a child that is text stays text. */
export function el(tag, attributes = {}, ...children) {
  const e = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, value);
  e.append(...children.filter((c) => c !== undefined && c !== ""));
  return e;
}

/** A copy of the one element in a template. */
export const copy = (id) => byId(id).content.firstElementChild.cloneNode(true);

export const slot = (root, name) => root.querySelector(`[data-slot="${name}"]`);

/** Puts texts into the slots of a part; unchanged ones are left alone. */
export function fill(root, texts) {
  for (const [name, text] of Object.entries(texts)) {
    const s = slot(root, name);
    if (s && s.textContent !== text) s.textContent = text;
  }
  return root;
}

const calm = matchMedia("(prefers-reduced-motion: reduce)");

/** Scrolls an element into view, smoothly where that is welcome. */
export function show(element, block = "start") {
  element.scrollIntoView({ behavior: calm.matches ? "auto" : "smooth", block });
}
