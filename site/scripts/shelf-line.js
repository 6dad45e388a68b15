// The place near the top of a form where the shelf speaks.
import { el } from "./dom.js";
import { say } from "./words.js";

/** The line, made where there is none yet. */
export function lineOf(main) {
  const there = main.querySelector(".shelf-line");
  if (there) return there;
  const line = el("section", { class: "shelf-line", "aria-label": say("Shelf") });
  main.querySelector("#form").prepend(line);
  return line;
}
