// The core in a worker, so that typing never waits for it.
import { build } from "./build.js";
import { compile } from "./compiled.js";
import { start } from "./engine.js";

let calculate;

self.onmessage = async ({ data }) => {
  try {
    if (!calculate) {
      if (data.build !== build) throw new Error("the worker is of another version");
      const module = data.module ?? (await compile(data.file, data.sum));
      calculate = await start(module, data.speech);
      self.postMessage({ ready: true, module: data.module ? undefined : module });
    }
    if (data.id) self.postMessage({ n: data.n, report: calculate(data.id, data.form) });
  } catch (error) {
    self.postMessage({ n: data.n, failed: String(error) });
  }
};
