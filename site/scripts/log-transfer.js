// The transfer efficiency that a weighed cup gives, offered as the next figure to reckon with.
import { all, Conflict, put, told } from "./db.js";
import { el } from "./dom.js";
import { notify } from "./notices.js";
import { parse, store, write } from "./state.js";
import { say } from "./words.js";

const key = "transfer_efficiency";

/** Puts a button beside the tools in a bar, where the report has a transfer efficiency. */
export function offerTransferTo(bar, report) {
  bar.parentElement.querySelector(".log-next")?.remove();
  const te = report.figures.find((f) => f.key === "transfer_found");
  if (!te) return;
  const button = el("button", { type: "button", class: "plain" }, say("Reckon with {te} % from now on", { te: te.text }));
  button.addEventListener("click", () => remember(te));
  bar.after(el("p", { class: "log-next" }, button));
}

/** Remembers a transfer efficiency for the forms that ask for one, and offers it to the guns on the shelf. */
export async function remember(te) {
  store.set("log-transfer", te.typed);
  const guns = await all("profile", "kind", "gun", "gun").catch(() => []);
  const first = guns.find((g) => g.id === store.get("inuse:gun"));
  const offered = first ? [first] : guns.slice(0, 4);
  const actions = Object.fromEntries(offered.map((gun) => [say("Keep it with {gun}", { gun: gun.name }), () => keepWith(gun, te)]));
  notify(say("Forms that ask for a transfer efficiency now offer {te} %. It is true for parts of this kind, this gun and this hand.", { te: te.text }), { ...actions, [say("Close")]: undefined });
}

async function keepWith(gun, te) {
  const form = parse(gun.form), before = gun.form;
  form.set(key, te.typed);
  form.delete(key + ".unit");
  try {
    const [kept] = await put("profile", { ...gun, form: write(form) });
    notify(say("{gun} now has {te} % on the shelf.", { gun: gun.name, te: te.text }), {
      [say("Undo")]: () => put("profile", { ...kept, form: before }).catch(() => {}), [say("Close")]: undefined,
    });
  } catch (error) {
    notify(error instanceof Conflict ? say("{gun} has just been changed in another tab. Try again.", { gun: gun.name }) : told(error, say("It could not be kept: this browser refused to write.")));
  }
}
