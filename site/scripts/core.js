// Asks the core for reports. It runs in a worker that is put down and started again when it does not answer, and on
// the page where workers cannot be had.
import { build } from "./build.js";
import { compile, held, sumOf, wordsOf } from "./compiled.js";
import { say } from "./words.js";
import { decimalMark } from "./tongue.js";
import { scriptAddress, workerType } from "./trusted.js";

const usual = 2000; // ms for one answer
const bootPatience = 20000; // ms for the core to load and compile, on a slow phone

export class Core {
  #file; // the compiled core
  #patience;
  #worker;
  #speech; // { words, mark }: what it speaks
  #module; // compiled once, kept for the next worker
  #onPage; // the core's function when it runs here
  #ready;
  #pending; // { n, done, timer }
  #last = Promise.resolve(); // the question before: it answers one at a time
  #n = 0;

  constructor(file, patience = usual) {
    this.#file = file;
    this.#patience = patience;
    this.#ready = this.#boot();
    this.#ready.catch(() => {}); // told to whoever asks
  }

  /** The report for a form. It rejects with words for the person when there is none. */
  report(id, form) {
    const answer = this.#last.then(() => this.#report(id, form));
    this.#last = answer.catch(() => {});
    return answer;
  }

  async #report(id, form) {
    for (const last of [false, true]) {
      try {
        await this.#ready;
        return JSON.parse(await this.#ask(id, form));
      } catch (error) {
        this.#restart();
        if (last) throw new Error(say("The core did not answer. What you typed is kept: change a number to try again, or reload the page."), { cause: error });
      }
    }
  }

  async #boot() {
    if (this.#onPage) return;
    this.#module ??= await held(this.#file);
    this.#speech ??= { words: await wordsOf(this.#file, document.documentElement.lang), mark: decimalMark };
    try {
      await this.#startWorker();
    } catch {
      this.#worker?.terminate();
      this.#worker = undefined;
      const { start } = await import("./engine.js");
      this.#onPage = await start((this.#module ??= await compile(this.#file, sumOf(this.#file))), this.#speech);
    }
  }

  #startWorker() {
    return new Promise((done, fail) => {
      const worker = new Worker(scriptAddress("core-worker.js"), { type: workerType });
      this.#worker = worker;
      const timer = setTimeout(() => fail(new Error("slow start")), bootPatience);
      worker.onerror = (event) => {
        event.preventDefault();
        fail(new Error("no worker"));
        this.#settle(undefined, new Error("worker died"));
      };
      worker.onmessage = ({ data }) => {
        if (data.module) this.#module = data.module;
        if (data.ready) {
          clearTimeout(timer);
          done();
        } else if (data.failed !== undefined) {
          fail(new Error(data.failed));
          this.#settle(undefined, new Error(data.failed));
        } else if (data.n === this.#pending?.n) {
          this.#settle(data.report);
        }
      };
      worker.postMessage({ build, file: this.#file, sum: sumOf(this.#file), module: this.#module, speech: this.#speech });
    });
  }

  #restart() {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#onPage = undefined;
    this.#ready = this.#boot();
    this.#ready.catch(() => {});
  }

  #ask(id, form) {
    if (this.#onPage) return this.#onPage(id, form);
    return new Promise((done, fail) => {
      const n = ++this.#n;
      const timer = setTimeout(() => this.#settle(undefined, new Error("too slow")), this.#patience);
      this.#pending = { n, done, fail, timer };
      this.#worker.postMessage({ n, id, form });
    });
  }

  #settle(report, error) {
    const call = this.#pending;
    if (!call) return;
    this.#pending = undefined;
    clearTimeout(call.timer);
    if (error) call.fail(error);
    else call.done(report);
  }
}
