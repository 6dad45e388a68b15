// Puts a course package together on the device: the learner's page with one set of exercises, all that it needs, and the
// file by which a course knows it.
import { el } from "./dom.js";
import { download } from "./download.js";
import { cmi5Manifest, escaped, scormManifest } from "./course-manifest.js";
import { learnersPage, packs, script, style, worker } from "./course-parts.js";
import { zip } from "./course-zip.js";
import { readSet } from "./exercise-core.js";
import { whyNot } from "./loading.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { write } from "./state.js";
import { say } from "./words.js";

const setCore = "shelf.wasm"; // reads the set and counts the score

// A SCORM course is spoken to in another window. cmi5 is by the network: the page asks for nothing until it knows where the
// course is, and then narrows this to there (course/launch.js).
const policy = (kind) => "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src data:; worker-src 'self'; " +
  (kind === "cmi5" ? "connect-src http: https:; " : "") + "base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types spraywright";

async function page(kind, link, { title, pass, cores }) {
  const body = (await learnersPage()).split("<main")[1].split('<footer class="foot"')[0];
  const held = (await packs(cores)).map(([id, text]) => `<script type="application/gzip" id="${id}">${text}</script>\n`);
  return `<!doctype html>
<html lang="${document.documentElement.lang}" class="js in-course" data-page="exercises" data-course="${kind}" data-pass="${pass}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy(kind)}">
<title>${escaped(title)}</title>
<meta name="referrer" content="no-referrer">
<link rel="stylesheet" href="site.css">
<script type="text/plain" id="set">${write(link)}</script>
${held.join("")}<script type="module" src="learner.js"></script>
</head>
<body>
<div id="notices" class="notices" role="status"></div>
<main${body}
<footer class="foot"><p id="course-says" role="status">${escaped(say("Asking the course what it has kept."))}</p>
<p><button type="button" class="action" id="course-leave" hidden>${escaped(say("Leave the exercises"))}</button></p></footer>
</body>
</html>
`;
}

/** The package of a set: its name and its bytes, as a Blob. kind is "scorm" or "cmi5"; coreOf gives the core of a calculator. */
export async function coursePackage(kind, link, coreOf) {
  if (!globalThis.CompressionStream) throw new Error(say("This browser is too old to write packages. Use a newer one."));
  const set = await readSet(link);
  if (set.problems.length > 0) throw new Error(set.problems.map(sentence).join(" "));
  const title = link.get("title") || say("Exercises"), description = link.get("note") || say("Tasks with numbers of your own, judged at once, with the working");
  const cores = [...new Set([setCore, ...set.tasks.map(({ of }) => coreOf(of))])].sort();
  const files = [
    ["index.html", await page(kind, link, { title, pass: set.pass, cores })],
    ["learner.js", await script()], ["worker.js", await worker()], ["site.css", await style()],
  ];
  const manifest = kind === "cmi5"
    ? ["cmi5.xml", cmi5Manifest(set, { title, description, lang: document.documentElement.lang })]
    : ["imsmanifest.xml", scormManifest(set, { title, files: files.map(([name]) => name) })];
  return { name: `exercises-${set.id}-${kind}.zip`, blob: await zip([manifest, ...files]) };
}

/** Hands a package to the person as a file. */
export async function savePackage(kind, link, coreOf, says) {
  const wait = el("span", { class: "soft" }, say("Putting the package together …"));
  says.replaceChildren(wait);
  try {
    const { name, blob } = await coursePackage(kind, link, coreOf);
    download(name, blob, blob.type);
    says.replaceChildren(say("Saved as {name}.", { name }));
  } catch (error) {
    says.replaceChildren();
    notify(whyNot(error));
  }
}
