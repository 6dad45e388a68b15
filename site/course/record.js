// A learner's record as the short text that a course keeps: the answers, and not what can be worked out from them again.

const version = 1;
const most = 4096; // characters of cmi.suspend_data in SCORM 1.2 (CMIString4096)

const judged = { r: "right", c: "close", o: "off" };
const letter = { right: "r", close: "c", off: "o" };

// Some courses count bytes: what is not ASCII is written in a way that is.
const ascii = (text) => text.replace(/[^ -~]/g, (c) => "\\u" + c.charCodeAt(0).toString(16).padStart(4, "0"));

const whole = (t) => [t.draw, t.answer, t.unit, letter[t.judged]];
const bare = (t) => [t.draw, "", "", letter[t.judged]];

/** Writes a record: with every answer, or where that is too long with those that count, or with how they were judged. */
export function compact({ seed, name, at, slots }) {
  const ways = [(s) => s.tries.map(whole), (s) => s.tries.slice(0, 1).map(whole), (s) => s.tries.slice(0, 1).map(bare)];
  const texts = ways.map((way) => ascii(JSON.stringify([version, seed, name, at, slots.map((s) => [s.draw, ...way(s)])])));
  return texts.find((text) => text.length <= most) ?? "";
}

/** Reads it back; {} where it is not one, so that the learner begins anew. */
export function expand(text) {
  try {
    const [v, seed, name, at, slots] = JSON.parse(text);
    if (v !== version) return {};
    return { seed: String(seed), name: String(name), at, slots: slots.map(([draw, ...tries]) => ({ draw, tries: tries.map(([d, answer, unit, j]) => {
      if (!judged[j]) throw new TypeError("no judgement");
      return { draw: d, answer: String(answer), unit: String(unit), judged: judged[j] };
    }) })) };
  } catch {
    return {};
  }
}
