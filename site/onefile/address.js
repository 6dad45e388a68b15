// Takes the place of scripts/address.js in the site that is one file: the address names a page of it and then the form,
// "#page=gun-delivery&air=31". The English first page needs no name. A place on the page and what would stand after the
// "?" follow the page's name: "page=sources:checks", "page=gun?item=2".

export const pageKey = "page";

const front = "index";
const hash = () => location.hash.slice(1);

/** What the address names: the page, a place on it, and the query. */
export function named() {
  const [rest, search = ""] = (new URLSearchParams(hash()).get(pageKey) ?? front).split(/\?(.*)/s);
  const [page, place = ""] = rest.split(":");
  return { page, place, search };
}

/** Whether the address is one of ours rather than a mere place on the page. "#1:" begins a form from a QR code. */
export const isAddress = () => hash() === "" || hash().includes("=") || /^\d:/.test(hash());

export const formText = () => hash().split("&").filter((pair) => !pair.startsWith(pageKey + "=")).join("&");

/** What stands after "#" for a page with a form, blank for the first page without one. */
export const fragment = (page, text = "") => [page === front ? "" : `${pageKey}=${page}`, text].filter(Boolean).join("&");

let leaving = false;

/** From now on the address belongs to the next page. */
export const leave = () => { leaving = true; };

export function withForm(text) {
  if (leaving) return location.href;
  const after = fragment(named().page, text);
  return location.href.split("#")[0] + (after && "#" + after);
}

export const query = () => new URLSearchParams(named().search);
export const dropQuery = () => history.replaceState(null, "", withForm(formText()));

/** What stands after "#" for an address between files, seen from a page; undefined where it leads out of the file. */
export function within(address, page, pages) {
  const goal = new URL(address, `https://one.invalid/${page}.html`);
  const name = goal.pathname.slice(1).replace(/\.html$/, "").replace(/(^|\/)$/, "$1index");
  if (goal.host !== "one.invalid" || !(name in pages)) return undefined;
  const after = goal.hash.slice(1);
  return after && !after.includes("=") ? fragment(`${name}:${after}`) : fragment(name + goal.search, after);
}

export const go = (address) => document.dispatchEvent(new CustomEvent("go", { detail: address }));

// A path on this device means nothing on another.
export const shareable = location.protocol === "https:" || location.protocol === "http:";

export const turn = () => false;
