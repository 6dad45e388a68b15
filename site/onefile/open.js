// Opens the site that is one file: unpacks the page that the address names, puts it into the document, and starts the
// site's own scripts on it. Another page is another start, so that the scripts find things as on a site of many files.
import { formText, fragment, isAddress, leave, named, pageKey, within } from "./address.js";
import { chosen } from "./chosen.js";
import { canUnpack } from "./packed.js";
import { elementsOf, openPages } from "./trusted.js";

const root = document.documentElement;
const anchor = (id) => id && document.getElementById(id);

function goTo(element) {
  for (let d = element.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
  element.scrollIntoView();
  element.focus({ preventScroll: true });
}

// Links between files become links within this one.
function rewrite(link, page, pages) {
  const address = link.getAttribute("href");
  if (!address.startsWith("#")) {
    const after = within(address, page, pages);
    if (after !== undefined) link.setAttribute("href", "#" + after);
  } else if (address.includes("=") && !address.startsWith(`#${pageKey}=`)) {
    link.setAttribute("href", "#" + fragment(page, address.slice(1)));
  }
}

function rewriteAll(scope, page, pages) {
  for (const link of scope.querySelectorAll("a[href]")) rewrite(link, page, pages);
  for (const template of scope.querySelectorAll("template")) rewriteAll(template.content, page, pages);
}

function follow(page, pages) {
  // What scripts add later is seen when it is used.
  document.addEventListener("click", ({ target }) => {
    const link = target.closest?.("a[href]");
    if (link) rewrite(link, page, pages);
  }, true);
  document.addEventListener("go", ({ detail }) => { location.hash = within(detail, page, pages); });
  // A mere place on the page must not take the page's name out of the address.
  addEventListener("click", (event) => {
    const goal = event.target.closest?.('a[href^="#"]')?.getAttribute("href").slice(1);
    if (event.defaultPrevented || !goal || goal.includes("=")) return;
    event.preventDefault();
    if (anchor(goal)) goTo(anchor(goal));
  });
  addEventListener("hashchange", (event) => {
    if (!isAddress()) return;
    const { page: next, place, search } = named();
    if (next === page && !search) {
      if (anchor(place)) goTo(anchor(place));
      return;
    }
    event.stopImmediatePropagation();
    leave();
    location.reload();
  });
}

// Who has chosen a language gets every page in it, as theme.js does on a site of many files.
function inLanguage(language, page, pages) {
  const plain = page.replace(/^[a-z]{2}\//, ""), other = language === "en" ? plain : `${language}/${plain}`;
  return language && other in pages ? other : page;
}

async function open() {
  const [pages, { theme, language }] = await Promise.all([openPages(), chosen()]);
  if (theme) root.dataset.theme = theme;
  const { page: asked, place, search } = named();
  const page = inLanguage(language, asked in pages ? asked : "menu", pages);
  if (asked in pages && page !== asked) {
    const after = fragment(page + (place && ":" + place) + (search && "?" + search), formText());
    history.replaceState(null, "", "#" + after);
  }
  const { lang, title } = pages[page];
  root.lang = lang;
  root.dataset.page = page;
  root.classList.add("in-one-file");
  document.title = title;
  document.body.replaceChildren(...elementsOf(page));
  for (const e of document.querySelectorAll(".online")) e.remove(); // there is no file beside this one
  rewriteAll(document.body, page, pages);
  follow(page, pages);
  await import("../scripts/app.js");
  if (anchor(place)) goTo(anchor(place));
  if (!(asked in pages)) {
    const [{ notify }, { say }] = await Promise.all([import("../scripts/notices.js"), import("../scripts/words.js")]);
    notify(say("This file has no page of that name. It may be older than the link."));
  }
}

if (canUnpack) await open();
else root.classList.add("unopened");
