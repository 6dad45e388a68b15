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
  const renew = async () => {
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
