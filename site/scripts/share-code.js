// QR codes: drawing that of a link, and writing out the form that one holds. The core does both.
import { pageKey, withForm } from "./address.js";
import { Core } from "./core.js";
import { notify } from "./notices.js";
import { sentence } from "./problems.js";
import { write } from "./state.js";
import { say } from "./words.js";

let core;

async function ask(id, key, text) {
  core ??= new Core("shelf.wasm");
  return core.report(id, write(new Map([[key, text]])));
}

/** What the core says of a link: rulings, the short link, and the picture of its code, where there is one. */
export async function codeOf(link) {
  const report = await ask("link-code", "link", link);
  return {
    rulings: report.verdict,
    cut: report.verdict.length > 1, // the second ruling is of a link that programs cut
    short: report.figures.find((f) => f.key === "short_link")?.text,
    picture: report.pictures[0],
    readable: report.verdict.some((r) => r.level === "go"),
  };
}

/** The code as a drawing in one piece. On paper a module is a point wide, 0.35 mm. */
export function codePicture({ width, height, says, shapes }) {
  const space = "http://www.w3.org/2000/svg";
  const svg = document.createElementNS(space, "svg"), path = document.createElementNS(space, "path");
  const set = (e, attributes) => Object.entries(attributes).forEach(([name, value]) => e.setAttribute(name, value));
  set(svg, { class: "code", viewBox: `0 0 ${width} ${height}`, width: `${width}pt`, height: `${height}pt`, role: "img", "aria-label": says });
  set(path, { d: shapes.map((s) => `M${s.x} ${s.y}h${s.w}v${s.h}h-${s.w}z`).join("") });
  svg.append(path);
  return svg;
}

/** Writes the form out that an address from a QR code holds, "#1:…", before anything reads the address. */
export async function unfold() {
  let text = "";
  try {
    const report = await ask("link-read", "folded", location.hash.slice(1));
    text = report.figures.find((f) => f.key === "form")?.text ?? "";
    if (!text) notify(sentence(report.problems[0]));
  } catch {
    notify(say("The form in this link could not be read. Scan the code again, or ask for the link itself."));
  }
  history.replaceState(null, "", withForm(text));
  if (!new URLSearchParams(text).has(pageKey)) return;
  location.reload(); // it belongs to another page of the one file
  await new Promise(() => {});
}
