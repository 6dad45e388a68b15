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
