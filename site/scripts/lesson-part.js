// Beneath every opened working stands a way to see it as a lesson. What a lesson takes is fetched with the first one.
import { el } from "./dom.js";
import { whyNot } from "./loading.js";
import { notify } from "./notices.js";
import { say } from "./words.js";

export function offerLessons(main) {
  let latest; // what the page has answered last
  const open = new Map(); // lessons by what they are about
  const wanted = new Set(); // which of them the person has open, whatever is drawn anew

  main.addEventListener("answer", ({ detail }) => {
    latest = detail;
    for (const [name, lesson] of open) {
      if (lesson.root.isConnected) lesson.update(detail).catch((error) => notify(error.message));
      else open.delete(name);
    }
  });

  async function show(name, box, pick) {
    const body = box.querySelector(".lesson-body");
    body.textContent = say("Preparing the lesson …");
    try {
      const { Lesson } = await import("./lesson.js");
      const lesson = new Lesson(main, body, pick);
      open.set(name, lesson);
      await lesson.update(latest);
    } catch (error) {
      body.textContent = whyNot(error);
    }
  }

  // Offers the lesson of what pick finds in a report, after its steps.
  function offer(steps, name, pick) {
    if (!steps || steps.nextElementSibling?.matches(".lesson")) return;
    const box = el("details", { class: "lesson" }, el("summary", {}, say("Show it as a lesson")), el("div", { class: "lesson-body" }));
    box.addEventListener("toggle", () => {
      wanted[box.open ? "add" : "delete"](name);
      if (box.open && !open.get(name)?.root.isConnected) show(name, box, pick);
    });
    steps.after(box);
    if (wanted.has(name)) box.open = true;
  }

  main.addEventListener("toggle", ({ target }) => {
    if (!target.open || !target.matches("#card .figure")) return;
    const key = target.closest("[data-out]").dataset.out;
    offer(target.querySelector(".steps"), key, (report) => report.figures.find((f) => f.key === key));
  }, true);

  // A cell of a list has its working beneath its row.
  main.addEventListener("click", ({ target }) => {
    const cell = target.closest('#card button.cell[aria-expanded="true"]');
    if (!cell) return;
    const key = cell.closest("[data-out]").dataset.out, [row, column] = cell.dataset.cell.split(".");
    offer(cell.closest("[data-line]").nextElementSibling?.querySelector(".steps"), `${key} ${cell.dataset.cell}`, (report) => report.lists.find((l) => l.key === key)?.rows[row]?.[column]);
  });
}
