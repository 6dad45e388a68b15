// What the person filled in, by key, as text; and the small things kept in the browser.
import { pageKey } from "./address.js";

/** What a shared link calls the number of its entries. It stands at both ends and is no part of the form. */
export const count = "fields";

/** How long the text of a form may be; a job of 300 parts has 60,000 characters. Longer ones would hold up the page. */
export const longest = 300000;

/** Reads a form from text such as "air=31&air.unit=degC". Anything can be read; the first of two equal keys counts.
 * What is too long is no form. */
export function parse(text = "", most = longest) {
  const form = new Map();
  if (text.length > most) return form;
  for (const [key, value] of new URLSearchParams(text)) {
    if (key && value && key !== count && key !== pageKey && !form.has(key)) form.set(key, value);
  }
  return form;
}

/** Whether a form holds more than the units to answer in. */
export const answered = (form) => [...form.keys()].some((key) => key !== "units");

// What a fragment may hold as it is (RFC 3986, 3.5), so that a person can read and edit a link.
const readable = { "%3A": ":", "%2F": "/", "%2C": ",", "%40": "@", "%21": "!", "%24": "$", "%27": "'", "%28": "(", "%29": ")", "%3B": ";", "%7E": "~" };

/** Writes a form as parse reads it, keys in order. */
export function write(form) {
  const pairs = [...form].sort(([a], [b]) => compareKeys(a, b));
  return new URLSearchParams(pairs).toString().replace(/%[0-9A-F]{2}/g, (code) => readable[code] ?? code);
}

// Row 2 comes before row 10.
function compareKeys(a, b) {
  const p = a.split("."), q = b.split(".");
  for (let i = 0; i < Math.min(p.length, q.length); i++) {
    if (p[i] === q[i]) continue;
    const m = Number(p[i]), n = Number(q[i]);
    return Number.isInteger(m) && Number.isInteger(n) && m !== n ? m - n : p[i] < q[i] ? -1 : 1;
  }
  return p.length - q.length;
}

// Something small kept in the browser. Reading never fails; a failed write says so.
const small = (storage) => ({
  get(name) {
    try {
      return storage().getItem("spraywright:" + name) ?? "";
    } catch {
      return "";
    }
  },
  set(name, text) {
    try {
      if (text) storage().setItem("spraywright:" + name, text);
      else storage().removeItem("spraywright:" + name);
      return true;
    } catch {
      return false;
    }
  },
});

/** What is kept for every tab. */
export const store = small(() => localStorage);

/** What is this tab's alone, and goes with it. */
export const tab = small(() => sessionStorage);
