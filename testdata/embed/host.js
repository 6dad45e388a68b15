// The pages of a host in tests: remembers what frames tell it, and what its own policy forbade.
"use strict";
window.heard = [];
window.forbidden = [];
addEventListener("message", ({ data, origin, source }) => {
  // Asked for when it is looked at: frames that scripts make come in any order.
  const frame = () => [...document.querySelectorAll("iframe")].findIndex((f) => f.contentWindow === source);
  heard.push(Object.defineProperty({ origin, ...data }, "frame", { get: frame, enumerable: true }));
});
addEventListener("securitypolicyviolation", (event) => forbidden.push(`${event.effectiveDirective} ${event.blockedURI}`));
document.addEventListener("spraywright", (event) => {
  event.target.dataset.told = `${event.target.dataset.told ?? ""} ${event.detail.kind}`.trim();
});
