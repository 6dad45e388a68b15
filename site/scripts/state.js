// What the person filled in, by key, and where it is kept: in the address, and in the browser.

/** Reads a form from text such as "air=31&air.unit=degC". Anything can be read; the first of two equal keys counts. */
export function parse(text) {
  const form = new Map();
  for (const [key, value] of new URLSearchParams(text)) {
    if (key && value && !form.has(key)) form.set(key, value);
  }
  return form;
}

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

/** Something small kept in the browser. Reading never fails; a failed write says so. */
export const store = {
  get(name) {
    try {
      return localStorage.getItem("spraywright:" + name) ?? "";
    } catch {
      return "";
    }
  },
  set(name, text) {
    try {
      if (text) localStorage.setItem("spraywright:" + name, text);
      else localStorage.removeItem("spraywright:" + name);
      return true;
    } catch {
      return false;
    }
  },
};

/** The form that the page opens with: the link's, else the one kept, else an empty one. */
export function opening(page) {
  const link = addressed();
  // A page that went in the middle of a number may have left its address behind what it kept.
  const own = link === "" || link === store.get("address:" + page);
  return parse(own ? store.get("form:" + page) : link);
}

// The form in the address, written as write does.
const addressed = () => write(parse(location.hash.slice(1)));

/** Keeps the form in the browser at once, and in the address soon: browsers limit how often that may change. */
export class Keeper {
  #page;
  #address = addressed();
  #text;
  #timer;
  #tell;
  #told = false;

  constructor(page, tell) {
    this.#page = page;
    this.#tell = tell;
  }

  keep(text) {
    if (!store.set("form:" + this.#page, text)) this.#warn();
    this.#text = text;
    // Left alone while it is right, so that a link followed at this moment is not overwritten.
    if (text !== this.#address) this.#timer ??= setTimeout(() => this.flush(), 400);
  }

  flush() {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const text = this.#text;
    if (text === undefined || text === this.#address) return;
    try {
      history.replaceState(null, "", text ? "#" + text : location.pathname + location.search);
      this.#address = text;
      store.set("address:" + this.#page, text);
    } catch {
      this.#warn(); // too long, or changed too often for this browser
    }
  }

  #warn() {
    if (this.#told) return;
    this.#told = true;
    this.#tell("This browser keeps nothing. Share or copy the link to save your work.");
  }
}
