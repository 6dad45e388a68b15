// The only script addresses that the page may start by name (Trusted Types).

const allowed = new Set([
  new URL("core-worker.js", import.meta.url).href,
  new URL("../sw.js", import.meta.url).href,
]);

const check = (address) => {
  const href = new URL(address, import.meta.url).href;
  if (!allowed.has(href)) throw new TypeError("not a script of this site");
  return href;
};

const policy = globalThis.trustedTypes?.createPolicy("spraywright", { createScriptURL: check });

export const workerType = "module";

/** The address of one of the two scripts, relative to this file. */
export const scriptAddress = (address) => (policy ? policy.createScriptURL(address) : check(address));
