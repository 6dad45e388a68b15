// Keeps the site on the device. A new version waits until the person says so.
import { byId } from "./dom.js";
import { notify } from "./notices.js";
import { scriptAddress } from "./trusted.js";

export async function keepOffline() {
  if (!("serviceWorker" in navigator) || !isSecureContext) {
    tell("Open over https, and this site will also work without a network.");
    return;
  }
  const container = navigator.serviceWorker;
  const had = Boolean(container.controller);
  try {
    const registration = await container.register(scriptAddress("../sw.js"), { scope: new URL("../", import.meta.url).pathname, updateViaCache: "none" });
    watch(registration, container);
    await container.ready;
    registration.update().catch(() => {}); // without a network, or half deployed: the version kept stays
    tell("Kept on this device: works without a network.");
  } catch {
    tell(had ? "Kept on this device: works without a network." : "This browser does not keep the site for use without a network.");
  }
}

const tell = (text) => { byId("kept").textContent = "Nothing you type leaves this device. " + text; };

function watch(registration, container) {
  let asked = false;
  const offer = () => {
    if (!registration.waiting || !container.controller || asked) return;
    asked = true;
    const use = () => {
      container.addEventListener("controllerchange", () => location.reload());
      registration.waiting?.postMessage("use");
    };
    notify("A new version is ready.", { "Use it": use, Close: undefined });
  };
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", offer);
  });
  offer();
}
