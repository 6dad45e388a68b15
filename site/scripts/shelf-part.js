// What the shelf adds to a calculator's page. It looks once the page stands, and loads the rest only where the shelf
// holds something for this form, or where the form is itself kept there.
import { all } from "./db.js";
import { arrivedByLink } from "./shelf-shown.js";

const kinds = ["data-sheet", "gun", "booth", "shop"];
const enough = 20; // items of a kind that show which facts there are

export function shelf(main) {
  let last; // the latest answer
  const typed = new Set(); // the keys that the person has typed at, from the first moment on
  for (const event of ["input", "change"]) main.addEventListener(event, ({ target }) => target.name && typed.add(target.name.replace(/\.unit$/, "")));
  main.addEventListener("answer", ({ detail }) => { last = detail; });
  const once = new Promise((done) => main.addEventListener("answer", done, { once: true }));
  const kind = main.dataset.calculator;
  if (kinds.includes(kind)) {
    const linked = arrivedByLink(kind); // before the page takes the link for its own
    import("./shelf-keep.js").then(({ KeptForm }) => new KeptForm(main, kind).begin(once, linked));
  }
  once.then(async () => {
    const [{ offerReadings }, some] = await Promise.all([import("./shelf-today.js"), sample()]);
    offerReadings(main, typed, () => last);
    if (some.length === 0 && !main.querySelector('[data-table] template.row-edit')) return;
    const { offerShelf } = await import("./shelf-fill.js");
    offerShelf(main, some, () => last);
  });
}

// A few items of each kind.
async function sample() {
  try {
    return (await Promise.all(kinds.map((kind) => all("profile", "kind", kind, kind, enough)))).flat();
  } catch {
    return [];
  }
}
