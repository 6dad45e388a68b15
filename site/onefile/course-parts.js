// Takes the place of scripts/course-parts.js in the site that is one file: the parts of a course package stand in it.
import { unpack } from "./packed.js";
import { openPages } from "./trusted.js";

const text = (id) => document.getElementById(id).textContent;
const { lang } = document.documentElement;

export async function learnersPage() {
  const pages = await openPages();
  return pages[lang === "en" ? "exercises" : lang + "/exercises"].body;
}

export const style = async () => document.querySelector("style").textContent;
export const script = async () => new TextDecoder().decode(await unpack("pack-course"));
export const worker = async () => text("worker");

/** The one core answers every exercise. */
export const packs = async () => [["pack-core-whole", text("pack-core")], ...(lang === "en" ? [] : [["pack-words-whole", text("pack-words-" + lang)]])];
