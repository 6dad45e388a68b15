// The month on paper: every mix in a table, under the totals.
import { byId, el } from "./dom.js";
import { list } from "./lists.js";
import { shown } from "./log-list.js";
import { say } from "./words.js";

/** Has the paper's own lines made before the page is printed; look gives { month, parts } as shown. */
export function preparePrint(look) {
  const prepare = () => {
    const { month, parts } = look();
    for (const details of document.querySelectorAll(".log-months")) details.open = true;
    const first = parts[0]?.report.lists.find((l) => l.key === "entry");
    if (!first) return byId("log-paper").replaceChildren();
    const rows = shown(parts).map(({ entry, cell }) => [{ text: entry.day, steps: [] }, ...first.columns.map((c) => ({ ...cell[c.key], steps: [] }))]);
    const all = list({ label: first.label, columns: [{ key: "day", label: say("Day") }, ...first.columns], rows: rows.reverse() }, "", () => []);
    byId("log-paper").replaceChildren(el("h2", {}, say("Mixes of {month}", { month })), all,
      el("p", { class: "written" }, say("Date"), " ", el("span", {}), " ", say("Signed"), " ", el("span", {})));
  };
  addEventListener("beforeprint", prepare);
  matchMedia("print").addEventListener("change", (event) => event.matches && prepare());
}
