// Texts of the page, in its language.

const { lang } = document.documentElement;
const { translated } = lang === "en" ? { translated: {} } : await import(`../${lang}/words.js`);

/** A text in the page's language, its {holes} filled. The English text is its name in the catalogue. */
export function say(text, holes = {}) {
  return (translated[text] ?? text).replace(/\{(\w+)\}/g, (hole, name) => (name in holes ? String(holes[name]) : hole));
}

/** The word for how an answer should be taken. */
export const levelWord = (level) => ({ go: say("Go"), wait: say("Wait"), stop: say("Stop") })[level];
