// Speaks to a course by the run-time interface of SCORM 1.2 (ADL, SCORM Run-Time Environment 1.2, 2001).
import { say } from "../scripts/words.js";
import { steady, timespan } from "./clock.js";

const levels = 7; // how many windows outwards the API is looked for

// The API adapter is an object called API in a window around this one, or around the one that opened it.
function around(from) {
  let w = from;
  for (let i = 0; i <= levels && w; i++) {
    try {
      if (w.API) return w.API;
    } catch {
      return undefined; // a window of another host, which cannot be looked into
    }
    if (w === w.parent) return undefined;
    w = w.parent;
  }
  return undefined;
}

function find() {
  let opener;
  try {
    opener = window.top.opener ?? window.opener;
  } catch {
    opener = window.opener;
  }
  return around(window) ?? (opener ? around(opener) : undefined);
}

const final = ["passed", "failed", "completed"];

export class Scorm {
  #api;
  #begun;
  #status;
  #counts = true; // what is done here counts: neither reviewed nor browsed
  #pass = ""; // percent that the course wants
  #over = false;

  /** Begins. Returns the text that the course has kept. */
  async open() {
    this.#api = find();
    if (!this.#api) throw new Error(say("No course answers here, so that nothing is reported. Open the exercises from the course."));
    this.#do("LMSInitialize", "");
    this.#begun = steady();
    this.#status = this.#get("cmi.core.lesson_status");
    this.#counts = !["browse", "review"].includes(this.#get("cmi.core.lesson_mode", true));
    this.#pass = this.#get("cmi.student_data.mastery_score", true);
    const text = this.#get("cmi.suspend_data", true);
    if (this.#counts && !final.includes(this.#status)) this.#state("incomplete");
    this.#do("LMSCommit", "");
    return text;
  }

  /** What a score needs to pass, as the core takes it, where the course says so. */
  needed() {
    return this.#pass ? [["pass", this.#pass]] : [];
  }

  /** Keeps a text. */
  async keep(text) {
    if (this.#over || !this.#counts) return;
    this.#set("cmi.suspend_data", text);
    this.#do("LMSCommit", "");
  }

  /** Reports a score, and that all tasks are answered. */
  async report(score, complete) {
    if (this.#over || !this.#counts) return;
    this.#set("cmi.core.score.min", "0");
    this.#set("cmi.core.score.max", "100");
    this.#set("cmi.core.score.raw", score.percent);
    if (complete) this.#state({ yes: "passed", no: "failed" }[score.passed] ?? "completed");
    this.#do("LMSCommit", "");
  }

  /** Ends; at once, because the page may be going. It returns what the course refused on the way, if anything; where it
   * refuses the end itself, it is not over. */
  leave() {
    if (this.#over || this.#begun === undefined) return undefined;
    let refused;
    const last = [
      () => this.#set("cmi.core.session_time", timespan(steady() - this.#begun)),
      () => this.#set("cmi.core.exit", final.includes(this.#status) ? "" : "suspend"),
      () => this.#do("LMSCommit", ""),
    ];
    for (const step of last) {
      try {
        step();
      } catch (error) {
        refused ??= error;
      }
    }
    this.#do("LMSFinish", "");
    this.#over = true;
    return refused;
  }

  #state(status) {
    if (status !== this.#status) this.#set("cmi.core.lesson_status", status);
    this.#status = status;
  }

  #get(element, maybe) {
    const text = String(this.#api.LMSGetValue(element));
    const code = String(this.#api.LMSGetLastError());
    if (code !== "0" && !maybe) throw this.#refusal(element, code);
    return code === "0" ? text : "";
  }

  #set(element, text) { this.#do("LMSSetValue", element, text); }

  #do(call, ...texts) {
    if (String(this.#api[call](...texts)) === "true") return;
    throw this.#refusal(call === "LMSSetValue" ? texts[0] : call, String(this.#api.LMSGetLastError()));
  }

  #refusal(what, code) {
    return new Error(say("The course refused {what}: {why} (error {code}).", { what, why: this.#api.LMSGetErrorString(code), code }));
  }
}
