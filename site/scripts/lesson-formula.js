// Lays a formula out as books print it, in the elements of MathML (W3C MathML Core). It reads the line that reports have,
// "WFT = DFT ÷ n ÷ (VS ÷ 100)": what divides goes beneath a bar, and brackets that the bar makes needless go. Numbers are
// texts here as everywhere; only where they stand is decided. In JavaScript because in a core it would take 7 kB.

const el = (tag, ...parts) => [tag, ...parts];
const row = (parts) => (parts.length === 1 ? parts[0] : el("mrow", ...parts));
const sign = (s) => el("mo", s);

const high = "⁰¹²³⁴⁵⁶⁷⁸⁹";

class Reader {
  #rest;
  #mark; // before decimals

  constructor(text, mark) {
    this.#rest = text.trim();
    this.#mark = mark;
  }

  // What a pattern finds at the start, taken off with the spaces around it.
  #take(pattern) {
    const found = pattern.exec(this.#rest)?.[0];
    if (found === undefined) return undefined;
    this.#rest = this.#rest.slice(found.length).trimStart();
    return found.trim();
  }

  #need(s) {
    if (!this.#rest.startsWith(s)) throw new SyntaxError(`no ${s} at ${this.#rest}`);
    this.#rest = this.#rest.slice(s.length).trimStart();
  }

  equation() {
    const parts = [this.#sum().all];
    while (this.#take(/^=/)) parts.push(sign("="), this.#sum().all);
    if (this.#rest) throw new SyntaxError(`left over: ${this.#rest}`);
    return row(parts);
  }

  // A piece is { all, sum, inner }: the element, whether it needs brackets among factors, and without its brackets.
  #sum() {
    const parts = [];
    let s = this.#take(/^−/), first;
    do {
      if (s) parts.push(sign(s));
      const piece = this.#product();
      first ??= piece;
      parts.push(piece.all);
    } while ((s = this.#take(/^[+−]/)));
    return parts.length === 1 ? first : { all: row(parts), sum: true };
  }

  #product() {
    const above = [this.#power()], below = [];
    for (let s; (s = this.#take(/^[×÷]/)); ) (s === "×" ? above : below).push(this.#power());
    if (below.length > 0) return { all: el("mfrac", times(above), times(below)) };
    return above.length === 1 ? above[0] : { all: times(above) };
  }

  #power() {
    if (this.#take(/^−/)) return { all: row([sign("−"), this.#power().all]), sum: true };
    const base = this.#atom();
    const digits = this.#take(/^[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+/);
    if (digits) return { all: el("msup", base.all, el("mn", digits.replace(/./g, (c) => (c === "⁻" ? "−" : String(high.indexOf(c)))))) };
    if (!this.#take(/^\^/)) return base;
    const by = this.#atom();
    return { all: el("msup", base.all, by.inner ?? by.all) };
  }

  #atom() {
    if (this.#take(/^√\(/)) return { all: el("msqrt", this.#closed(this.#sum()).all) };
    if (this.#take(/^\(/)) {
      const { all, sum } = this.#closed(this.#sum());
      return { all: row([sign("("), all, sign(")")]), sum, inner: all };
    }
    const number = this.#take(this.#mark === "," ? /^\d+(,\d+)?/ : /^\d+(\.\d+)?/);
    if (number) return { all: el("mn", number) };
    return this.#named();
  }

  #closed(piece) {
    this.#need(")");
    return piece;
  }

  // A name, "ρ_2", or a function of some numbers, whose name may be several words: "round up".
  #named() {
    const name = this.#take(/^\p{L}[\p{L}0-9_]*( \p{L}[\p{L}0-9_]*)*/u);
    if (!name) throw new SyntaxError(`no name at ${this.#rest}`);
    if (!this.#take(/^\(/)) return { all: symbol(name) };
    const between = this.#mark === "," ? ";" : ",", parts = [symbol(name), sign("("), this.#sum().all];
    while (this.#rest.startsWith(between)) {
      this.#need(between);
      parts.push(sign(between), this.#sum().all);
    }
    this.#need(")");
    return { all: row([...parts, sign(")")]) };
  }
}

// Factors side by side. One alone needs no brackets; among others a sum does.
function times(factors) {
  if (factors.length === 1) return factors[0].inner ?? factors[0].all;
  return row(factors.flatMap((f, i) => [...(i > 0 ? [sign("×")] : []), f.inner && !f.sum ? f.inner : f.all]));
}

/** A name, what follows its underscore set low. */
export function symbol(name) {
  const [base, ...low] = name.split("_");
  return low.length === 0 ? el("mi", base) : el("msub", el("mi", base), el("mi", low.join(",")));
}

/** The elements of a formula as lists: [tag, text] or [tag, element, …]. What is no formula is plain text. */
export function layout(text, decimalMark) {
  try {
    return new Reader(text, decimalMark).equation();
  } catch {
    return el("mtext", text);
  }
}

/** What a report says under a formula, "DFT: dry film wanted, 60 µm; n: coats, 2", entry by entry: [sign, name, value]. A sign
 * has no space in it, so that a name may hold a semicolon. */
export const legend = (text) => text.split(/; (?=[^ :]+: )/).filter(Boolean).map((entry) => /^([^ :]+): (?:(.*), )?(.*)$/.exec(entry)?.slice(1) ?? ["", "", entry]);
