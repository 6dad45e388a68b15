// Has every page mind the timers, and loads nothing for it until there are any.
import { store } from "./state.js";

const show = () => import("./timer-strip.js").then((strip) => strip.open());

export function mindTimers() {
  if (store.get("timers")) show();
  else addEventListener("storage", ({ key, newValue }) => key === "spraywright:timers" && newValue && show());
}
