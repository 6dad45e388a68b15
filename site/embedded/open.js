// An embedded page: one calculator of the site in a frame of another page. It takes the calculator's own page, leaves out
// what belongs to the site around it, and keeps nothing.
import { firstForm, options } from "./address.js";
import { dress, fieldsOf } from "./dress.js";
import { answerOf, heed, tell, tellHeight } from "./host.js";
import { pageOf } from "./trusted.js";
import { byId, el } from "../scripts/dom.js";
import { nudging } from "../scripts/nudge.js";
import { Page } from "../scripts/page.js";
import { write } from "../scripts/state.js";
import { say } from "../scripts/words.js";

const root = document.documentElement;
const themes = ["light", "dark", "booth"];

function look(theme) {
  if (themes.includes(theme)) root.dataset.theme = theme;
  else delete root.dataset.theme;
}

function refuse() {
  byId("main").replaceChildren(el("p", {}, say("There is no calculator “{name}” to show in this frame.", { name: options.of })));
  tell("ready", { fields: [] });
}

// The working of a main figure is opened once, when it first stands there.
function openWorking(main) {
  const seen = new Set(), which = main.querySelector('[data-main="true"]') ? '[data-main="true"]' : "[data-out]";
  main.addEventListener("answer", () => {
    for (const holder of main.querySelectorAll(`#card ${which}:not([hidden])`)) {
      const details = holder.querySelector("details.figure");
      if (!details || seen.has(holder.dataset.out)) continue;
      seen.add(holder.dataset.out);
      details.open = true;
    }
  });
}

// Leads to the site's own page with the same form. In a sandbox no link leads anywhere.
function leadOut(main, page) {
  if (self.origin === "null" || options.answer === "hidden") return;
  const link = el("a", { target: "_blank", rel: "noopener", href: `${page}.html` }, say("Open it on its own page"));
  main.append(el("p", { class: "frame-foot" }, link));
  main.addEventListener("answer", ({ detail }) => { link.href = `${page}.html#${write(detail.form)}`; });
}

async function open() {
  root.classList.add("js");
  look(options.theme);
  root.classList.toggle("answerless", options.answer === "hidden");
  const resize = tellHeight();
  const name = options.of === root.dataset.front ? "index" : options.of;
  const page = await pageOf(name).catch(() => undefined), main = page?.querySelector("main");
  if (main?.dataset.calculator !== options.of) return refuse();
  document.title = page.title;
  document.body.replaceChildren(byId("notices"), ...page.querySelectorAll("body > main, body > aside, body > template"));
  let last;
  const fill = (values) => main.dispatchEvent(new CustomEvent("fill", { detail: { values } }));
  const again = () => fill(new Map([...[...last.form.keys()].map((key) => [key, ""]), ...firstForm()]));
  const fields = fieldsOf(main);
  const ready = () => tell("ready", { fields });
  dress(main, again);
  nudging(main);
  if (options.working === "open") openWorking(main);
  leadOut(main, name);
  main.addEventListener("answer", ({ detail }) => {
    last = detail;
    tell("answer", answerOf(detail));
  });
  heed({
    fill,
    theme: look,
    ask: () => {
      ready();
      resize();
      if (last) tell("answer", answerOf(last));
    },
  });
  new Page(main).open();
  ready();
}

await open();
