// Takes the place of scripts/trusted.js in an embedded page. A script address is that of the worker whose text came with
// this script, and markup is a page of this site, fetched here: neither can be given from outside.
import { text } from "./worker-text.js"; // made by the build
import { build } from "../scripts/build.js";

let worker, markup = "";

const rules = {
  createScriptURL: () => (worker ??= URL.createObjectURL(new Blob([text], { type: "text/javascript" }))),
  createHTML: () => markup,
};
const policy = globalThis.trustedTypes?.createPolicy("spraywright", rules) ?? rules;

// In a sandbox the page has no origin, and a worker cannot be started by an address of the site.
export const workerType = "classic";

export const scriptAddress = () => policy.createScriptURL("");

/** The page of a name in the language of this one, as a document; undefined where there is none. */
export async function pageOf(name) {
  if (!/^[a-z][a-z0-9-]{0,60}$/.test(name)) return undefined;
  const answer = await fetch(new URL(`./${name}.html`, document.baseURI));
  if (!answer.ok) return undefined;
  markup = await answer.text();
  const page = new DOMParser().parseFromString(policy.createHTML(""), "text/html");
  if (page.documentElement.dataset.build !== build) throw new Error(`${name}.html is of another version`);
  return page;
}
