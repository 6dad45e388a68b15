// The pages of a host in tests: remembers what frames tell it, and what its own policy forbade.
"use strict";
window.heard = [];
window.forbidden = [];
addEventListener("message", (event) => {
  const frame = [...document.querySelectorAll("iframe")].findIndex((f) => f.contentWindow === event.source);
  heard.push({ frame, origin: event.origin, ...event.data });
});
addEventListener("securitypolicyviolation", (event) => forbidden.push(`${event.effectiveDirective} ${event.blockedURI}`));
document.addEventListener("spraywright", (event) => {
  event.target.dataset.told = `${event.target.dataset.told ?? ""} ${event.detail.kind}`.trim();
});
