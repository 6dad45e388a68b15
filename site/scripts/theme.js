// Runs before the page is drawn: marks that scripts run, and takes up the look chosen last.
"use strict";
document.documentElement.classList.add("js");
try {
  const theme = localStorage.getItem("spraywright:theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // No storage: the device's own look stands.
}
