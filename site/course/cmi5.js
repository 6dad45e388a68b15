// Speaks to a cmi5 course: what it keeps, and the statements that it is sent, in the order that the standard has (cmi5,
// Quartz, 1st edition, sections 9 and 10).
import { say } from "../scripts/words.js";
import { duration, stamp, steady } from "./clock.js";
import { client, launched, narrow, token } from "./launch.js";

const ownState = "spraywright-exercises"; // the state that is ours
const base = "https://w3id.org/xapi/cmi5/context/";
const ofCmi5 = { id: base + "categories/cmi5" }, ofMoveOn = { id: base + "categories/moveon" };

// A random UUID, version 4 (RFC 9562, 5.4). crypto.randomUUID is not there on a page that came over plain http.
function uuid() {
  const b = crypto.getRandomValues(new Uint8Array(16));
  b[6] = (b[6] & 15) | 64;
  b[8] = (b[8] & 63) | 128;
  return [...b].map((x, i) => ([4, 6, 8, 10].includes(i) ? "-" : "") + x.toString(16).padStart(2, "0")).join("");
}

export class Cmi5 {
  #launch;
  #lrs;
  #data; // LMS.LaunchData
  #own = { kept: "", said: {} }; // said holds by its verb what is said once in a registration: { id, done }
  #stored = ""; // the text that the course has kept
  #begun;
  #end = uuid(); // of the statement "terminated", however often it is tried
  #over = false;

  /** Begins. Returns the text that the course has kept. */
  async open() {
    this.#launch = launched();
    if (!this.#launch) throw new Error(say("No course answers here, so that nothing is reported. Open the exercises from the course."));
    narrow(this.#launch);
    this.#lrs = client(this.#launch, await token(this.#launch));
    this.#data = await this.#lrs.launchData();
    await this.#lrs.preferences(); // it must be asked for; there is no sound here, and one language
    this.#own = { ...this.#own, ...(await this.#lrs.kept(ownState)) };
    this.#stored = this.#own.kept;
    const begun = steady();
    await this.#send("initialized", uuid());
    this.#begun = begun;
    return this.#own.kept;
  }

  get #counts() { return this.#data.launchMode === "Normal"; }

  /** What a score needs to pass, as the core takes it, where the course says so. */
  needed() {
    return this.#data.masteryScore === undefined ? [] : [["mastery", String(this.#data.masteryScore)]];
  }

  /** Keeps a text. */
  async keep(text) {
    if (this.#over || !this.#counts || text === this.#stored) return;
    this.#own.kept = text;
    await this.#store();
  }

  // Nothing is written or said once the learner has left.
  #still() {
    if (this.#over) throw new Error(say("The exercises have been left already."));
  }

  async #store() {
    this.#still();
    const text = this.#own.kept;
    await this.#lrs.keep(ownState, this.#own);
    this.#stored = text;
  }

  /** Reports that all tasks are answered, with the score. Each of these is said once in a registration. */
  async report({ right, tasks, scaled, mastery, passed }, complete) {
    if (this.#over || !this.#counts || !complete) return;
    const score = { scaled, raw: right, min: 0, max: tasks }, time = duration(steady() - this.#begun);
    // A score belongs to passed and failed; where nobody has to pass it goes in a statement that is not cmi5's own.
    if (passed === undefined) await this.#once("scored", { score }, []);
    await this.#once("completed", { completion: true, duration: time }, [ofCmi5, ofMoveOn]);
    if (passed !== undefined && !this.#done("passed") && !this.#done("failed")) {
      const verb = passed === "yes" ? "passed" : "failed";
      await this.#once(verb, { score, success: passed === "yes", duration: time }, [ofCmi5, ofMoveOn], { [base + "extensions/masteryscore"]: mastery });
    }
    await this.#store();
  }

  #done(verb) { return this.#own.said[verb]?.done === true; }

  // Its id is kept before it is sent, so that what was sent and not heard of is sent again as the same statement, in this
  // session or another.
  async #once(verb, ...rest) {
    if (this.#done(verb)) return;
    const said = (this.#own.said[verb] ??= { id: uuid() });
    await this.#store();
    await this.#send(verb, said.id, ...rest);
    said.done = true;
  }

  /** Ends. The page may be going, so that the last statement is sent in a way that outlives it. Where the course refuses, it
   * is not over. */
  async leave(going) {
    if (this.#over || this.#begun === undefined) return;
    this.#over = true;
    try {
      await this.#send("terminated", this.#end, { duration: duration(steady() - this.#begun) }, [ofCmi5], {}, true);
    } catch (error) {
      this.#over = false;
      throw error;
    }
    const back = this.#data.returnURL;
    if (!going && /^https?:/i.test(back ?? "")) location.assign(back);
  }

  async #send(verb, id, result, categories = [ofCmi5], extensions = {}, last) {
    if (!last) this.#still();
    const context = structuredClone(this.#data.contextTemplate ?? {}), activities = context.contextActivities ?? {};
    const theirs = [activities.category ?? []].flat();
    return this.#lrs.statement({
      id,
      actor: this.#launch.agent,
      verb: { id: "http://adlnet.gov/expapi/verbs/" + verb, display: { en: verb } },
      object: { objectType: "Activity", id: this.#launch.activityId },
      ...(result ? { result } : {}),
      context: {
        ...context, registration: this.#launch.registration,
        contextActivities: { ...activities, category: [...theirs, ...categories.filter(({ id }) => !theirs.some((t) => t.id === id))] },
        extensions: { ...extensions, ...context.extensions },
      },
      timestamp: stamp(),
    }, last);
  }
}
