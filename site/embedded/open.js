// An embedded page: one calculator of the site, or a set of exercises, in a frame of another page. It takes the calculator's own page, leaves out
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
  byId("main").replaceChildren(el("h1", { class: "unseen" }, document.title), el("p", {}, say("There is no calculator “{name}” to show in this frame.", { name: options.of })));
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

// A set of exercises stands in a frame as a calculator does, and tells how far the learner is.
async function practise(main) {
  for (const link of main.querySelectorAll("a")) Object.assign(link, { target: "_blank", rel: "noopener" }); // no page but this can be framed
  let last;
  document.addEventListener("exercise", ({ detail }) => tell("exercise", (last = detail)));
  const { open: begin } = await import("../scripts/exercise.js");
  await begin(main);
  return { ready: () => tell("ready", { fields: [] }), again: () => last && tell("exercise", last), fill: () => {} };
}

function calculate(main, name) {
  let last;
  const fill = (values) => main.dispatchEvent(new CustomEvent("fill", { detail: { values } }));
  const fields = fieldsOf(main);
  dress(main, () => fill(new Map([...[...last.form.keys()].map((key) => [key, ""]), ...firstForm()])));
  nudging(main);
  if (options.working === "open") openWorking(main);
  leadOut(main, name);
  main.addEventListener("answer", ({ detail }) => {
    last = detail;
    tell("answer", answerOf(detail));
  });
  new Page(main).open();
  return { ready: () => tell("ready", { fields }), again: () => last && tell("answer", answerOf(last)), fill };
}

async function open() {
  root.classList.add("js");
  look(options.theme);
  root.classList.toggle("answerless", options.answer === "hidden");
  const resize = tellHeight();
  const name = options.of === root.dataset.front ? "index" : options.of;
  const page = await pageOf(name).catch(() => undefined), main = page?.querySelector("main");
  const exercises = name === "exercises" && main?.dataset.module === "exercise";
  if (!exercises && main?.dataset.calculator !== options.of) return refuse();
  document.title = page.title;
  document.body.replaceChildren(byId("notices"), ...page.querySelectorAll("body > main, body > aside, body > template"));
  const { ready, again, fill } = exercises ? await practise(main) : calculate(main, name);
  heed({
    fill,
    theme: look,
    ask: () => {
      ready();
      resize();
      again();
    },
  });
  ready();
}

await open();
