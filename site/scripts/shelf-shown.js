// Which item of the shelf, or which entry of the log, the page of a kind shows. Each tab has its own; a new tab takes up the last one, as it does the form.
import { dropQuery, formText, query } from "./address.js";
import { parse, store, tab, write } from "./state.js";

const name = (kind) => "item:" + kind;

/** Remembers that an item is shown, and of which rev. */
export function remember(kind, { id, rev }) {
  const text = `${id} ${rev}`;
  tab.set(name(kind), text);
  store.set(name(kind), text);
}

export function forget(kind) {
  tab.set(name(kind), "none");
  store.set(name(kind), "");
}

/** The item shown before this page was loaded, as { id, rev }, or undefined. */
export function shownBefore(kind) {
  const text = tab.get(name(kind)) || store.get(name(kind));
  if (!text || text === "none") return undefined;
  const [id, rev] = text.split(" ");
  return { id, rev: Number(rev) };
}

/** Goes to the page of a kind to show an item there, or "new" for an empty form. */
export function openItem(kind, id) {
  tab.set("open:" + kind, id);
}

/** The item that this page was opened for, blank for none. It is asked once. */
export function asked(kind) {
  const item = query().get("item") ?? "", id = tab.get("open:" + kind) || item;
  tab.set("open:" + kind, "");
  if (item) dropQuery();
  return id;
}

/** Whether the form in the address came by a link, so that it is none of the shelf's. */
export function arrivedByLink(kind) {
  const link = write(parse(formText()));
  return link !== "" && link !== store.get("address:" + kind) && link !== tab.get("form:" + kind);
}

/** Remembers the form of this tab: the address kept with the page is the last of all tabs. */
export const noteForm = (kind, form) => tab.set("form:" + kind, write(form));
