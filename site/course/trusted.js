// Takes the place of scripts/trusted.js in a course package: the only script that may be started by name is the worker
// beside the page.

const address = () => new URL("worker.js", document.baseURI).href;
const policy = globalThis.trustedTypes?.createPolicy("spraywright", { createScriptURL: address });

export const workerType = "classic";

export const scriptAddress = () => (policy ? policy.createScriptURL("") : address());
