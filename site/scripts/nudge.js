// The buttons beside a number that take it to the mark below or above. The marks come from the core, worded as typed.
import { byId } from "./dom.js";
import { say } from "./words.js";

export function nudging(main) {
  const form = byId("form");
  const marks = new Map(); // by field: { less, more }
  const waiting = []; // presses that came before the core had answered the one before

  const press = (field, way) => {
    const text = marks.get(field)?.[way];
    if (!text) return;
    marks.delete(field); // they stand beside the number that was
    const box = byId("f-" + field);
    box.value = text;
    box.dispatchEvent(new Event("input", { bubbles: true }));
    byId("spoken").textContent = say("{label}: {number}", { label: box.closest(".field").dataset.label, number: text });
  };

  form.addEventListener("click", ({ target }) => {
    const { nudge: way, of: field } = target.closest(".nudge")?.dataset ?? {};
    if (!way) return;
    if (marks.has(field)) press(field, way);
    else if (byId("f-" + field).value) waiting.push([field, way]);
  });

  main.addEventListener("answer", ({ detail: { report, current } }) => {
    marks.clear();
    if (!current) return; // what stands in the fields now is answered next
    for (const { field, less, more } of report.nudges) marks.set(field, { less, more });
    for (const button of form.querySelectorAll(".nudge")) {
      const { nudge: way, of: field } = button.dataset;
      const { label } = button.closest(".field").dataset;
      button.setAttribute("aria-label", way === "less" ? say("{label}: less", { label }) : say("{label}: more", { label }));
      button.setAttribute("aria-disabled", String(!marks.get(field)?.[way]));
    }
    const next = waiting.shift();
    if (next) press(...next);
  });
}
