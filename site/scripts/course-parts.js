// What a course package is put together from: files of this site, which the device keeps. The build of the site in one file
// puts another module with the same exports in its place.

import { say } from "./words.js";

const own = (name) => new URL("../" + name, import.meta.url);

async function file(name) {
  const answer = await fetch(own(name));
  if (!answer.ok) throw new Error(say("{name} could not be loaded ({status}).", { name, status: answer.status }));
  return answer;
}

const { lang } = document.documentElement;

// gzip in base64, as packed.js of the site in one file reads it.
async function packed(bytes) {
  const blob = await new Response(new Blob([bytes]).stream().pipeThrough(new CompressionStream("gzip"))).blob();
  return new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result.split(",")[1]);
    reader.onerror = () => fail(reader.error);
    reader.readAsDataURL(blob);
  });
}

/** The learner's page in this page's language: what stands in its body before the foot. */
export const learnersPage = async () => (await (await fetch("exercises.html")).text()).split("<body>")[1];

export const style = async () => (await file("site.css")).text();
export const script = async () => (await file("course/learner.js")).text();
export const worker = async () => (await file("course/worker.js")).text();

/** The packs that hold some cores, "bench.wasm", with what they say: [id, gzip in base64]. */
export async function packs(cores) {
  const all = [];
  for (const core of cores) {
    const name = core.replace(".wasm", "");
    all.push(["pack-core-" + name, await packed(await (await file(core)).arrayBuffer())]);
    if (lang !== "en") all.push(["pack-words-" + name, await packed(await (await file(`${lang}/${name}.words`)).arrayBuffer())]);
  }
  return all;
}
