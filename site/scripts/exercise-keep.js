// Where a learner's record of a set is kept: in the browser. A course package has another module with the same exports in
// its place, which hands it to the course.
import { store } from "./state.js";

const list = "exercises"; // the names of the sets that are kept, the oldest first
const most = 12;

/** What is kept of a set; nothing that can be read makes it blank. */
export function kept(id) {
  try {
    return JSON.parse(store.get("exercise:" + id) || "{}");
  } catch {
    return {};
  }
}

/** Whether the browser keeps anything; what it has stays as it is. */
export const keeps = () => store.set(list, store.get(list));

/** Keeps the record. Returns whether the browser does. */
export function keep(id, record) {
  const names = store.get(list).split(" ").filter((name) => name && name !== id);
  while (names.length >= most) store.set("exercise:" + names.shift(), "");
  return store.set(list, [...names, id].join(" ")) && store.set("exercise:" + id, JSON.stringify(record));
}

/** Forgets it. */
export function drop(id) {
  store.set("exercise:" + id, "");
  store.set(list, store.get(list).split(" ").filter((name) => name && name !== id).join(" "));
}
