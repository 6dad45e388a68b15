// The lines of HTML that put a calculator, or a link, into another page.

const escaped = (text) => text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign]);
const root = () => new URL(document.documentElement.lang === "en" ? "./" : "../", document.baseURI).href;

/** The address of the frame page in a language, with what stands after its "#". */
export const frameAddress = (show, language) => `${root()}${language === "en" ? "" : language + "/"}embed.html#${show}`;

/** A frame that needs no script of ours on the page; its height is fixed. */
export function frameTag({ show, language, title, height, sandbox }) {
  return `<iframe src="${escaped(frameAddress(show, language))}" title="${escaped(title)}"${sandbox ? ' sandbox="allow-scripts"' : ""} width="100%" height="${escaped(String(height))}" frameborder="0"></iframe>`;
}

/** A script that puts the frame where it stands and keeps it as high as what is in it. */
export function scriptTag({ show, language, title, sandbox }) {
  return `<script src="${escaped(root())}embed.js" data-show="${escaped(show)}"${language === "en" ? "" : ` data-language="${escaped(language)}"`} data-title="${escaped(title)}"${sandbox ? " data-sandbox" : ""} async></script>`;
}

export const linkTag = (address, text) => `<a href="${escaped(address)}">${escaped(text)}</a>`;
