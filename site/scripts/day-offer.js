// "Put into the day": hands the job on the page over to the booth day.
import { byId, el } from "./dom.js";
import { say } from "./words.js";

/** Part of every calculator's page: offers it where the answer has rows for the day. */
export function offerDay(main) {
  let rows, line;
  main.addEventListener("answer", ({ detail }) => {
    rows = detail.report.lists.find((l) => l.key === "day_rows")?.rows[0][0].text;
    if (rows && !line) byId("cautions").before(line = offer());
    if (line) line.hidden = !rows;
  });
  const offer = () => {
    const put = el("button", { type: "button", class: "action" }, say("Put into the day"));
    put.addEventListener("click", async () => (await import("./day-put.js")).putIntoDay(rows));
    return el("p", { class: "day-offer" }, put, " ", el("a", { class: "plain", href: "day.html" }, say("See the day")));
  };
}
