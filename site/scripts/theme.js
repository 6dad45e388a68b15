// Runs before the page is drawn: marks that scripts run, and takes up the look chosen last.
"use strict";
document.documentElement.classList.add("js");
try {
  const theme = localStorage.getItem("spraywright:theme");
  if (theme) document.documentElement.dataset.theme = theme;
  // Who has chosen a language gets every page in it.
  const language = localStorage.getItem("spraywright:language");
  const other = language !== document.documentElement.lang && document.querySelector(`link[hreflang="${language}"]`);
  if (other) location.replace(other.href + location.search + location.hash);
} catch {
  // No storage: the device's own look stands.
}

// A part that did not come, or that does not belong to the others because a new version is just being put on the host or
// a cache still has some of the old: that is said in one line, since this page does not work with them.
{
  const torn = /\bv_[0-9a-f]{12}|imported module|module script/i;
  // The service worker of a copy that is no longer whole makes room: for the host's, or where it has none any more, for none.
  const renewKeeper = async () => {
    const keeper = await navigator.serviceWorker?.getRegistration();
    if (!keeper?.active) return;
    const answer = await fetch(keeper.active.scriptURL, { cache: "no-store" });
    if (!answer.ok) return keeper.unregister();
    await keeper.update();
    const next = keeper.installing ?? keeper.waiting;
    if (!next) return;
    const taken = new Promise((done) => navigator.serviceWorker.addEventListener("controllerchange", done));
    const use = () => next.state === "installed" && next.postMessage("use");
    next.addEventListener("statechange", use);
    use();
    await Promise.race([taken, new Promise((done) => setTimeout(done, 10000))]);
  };
  const renew = async ({ currentTarget: button }) => {
    button.disabled = true;
    await renewKeeper().catch(() => {}); // without a network it stays
    const parts = new Set([...document.querySelectorAll("script[src]")].map((e) => e.src));
    for (const { name } of performance.getEntriesByType("resource")) if (new URL(name).origin === location.origin) parts.add(name);
    await Promise.allSettled([...parts].map((part) => fetch(part, { cache: "reload" }))); // past any cache
    location.reload();
  };
  const tell = () => {
    if (document.readyState === "loading") return addEventListener("DOMContentLoaded", tell, { once: true });
    const line = document.getElementById("torn");
    if (!line?.hidden) return;
    line.hidden = false;
    line.querySelector("button").addEventListener("click", renew);
  };
  addEventListener("error", ({ target, message }) => (target?.matches?.("script, link[rel=stylesheet]") || torn.test(message)) && tell(), true);
  addEventListener("unhandledrejection", ({ reason }) => torn.test(reason) && tell());
}
