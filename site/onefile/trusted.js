// Takes the place of scripts/trusted.js in the site that is one file. A script address is that of the worker whose text
// the file holds, and markup is a page that the file holds: neither can be given from outside.
import { unpack } from "./packed.js";

let worker, pages = {};

const rules = {
  createScriptURL: () => (worker ??= URL.createObjectURL(new Blob([document.getElementById("worker").textContent], { type: "text/javascript" }))),
  createHTML: (name) => pages[name].body,
};
const policy = globalThis.trustedTypes?.createPolicy("spraywright", rules) ?? rules;

// Browsers refuse a module from such an address to a page that is a file.
export const workerType = "classic";

/** The address of the worker's script. */
export const scriptAddress = () => policy.createScriptURL("");

/** Unpacks the pages: by name, each with its title, language and body. */
export async function openPages() {
  pages = { __proto__: null, ...JSON.parse(new TextDecoder().decode(await unpack("pack-pages"))) }; // no name but a page's is in it
  return pages;
}

/** The elements of a page's body. */
export const elementsOf = (name) => [...new DOMParser().parseFromString(policy.createHTML(name), "text/html").body.childNodes];
