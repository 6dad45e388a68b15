// Keeps the site on the device. A new version waits until the person says so.
import { offerInstall } from "./install.js";
import { notify } from "./notices.js";
import { sayKept } from "./persist.js";
import { scriptAddress } from "./trusted.js";
import { say } from "./words.js";

export async function keepOffline() {
  offerInstall();
  const works = say("Kept on this device: works without a network.");
  if (!("serviceWorker" in navigator) || !isSecureContext) {
    sayKept(say("Open over https, and this site will also work without a network."));
    return;
  }
  const container = navigator.serviceWorker;
  const had = Boolean(container.controller);
  try {
    const registration = await container.register(scriptAddress("../sw.js"), { scope: new URL("../", import.meta.url).pathname, updateViaCache: "none" });
    watch(registration, container);
    await container.ready;
    registration.update().catch(() => {}); // without a network, or half deployed: the version kept stays
    sayKept(works);
  } catch {
    sayKept(had ? works : say("This browser does not keep the site for use without a network."));
  }
}

function watch(registration, container) {
  let offered = false, wanted = false;
  const offer = () => {
    if (!registration.waiting || !container.controller || offered) return;
    offered = true;
    const use = () => {
      wanted = true;
      registration.waiting?.postMessage("use");
    };
    notify(say("A new version is ready. What you typed and your timers stay."), { [say("Use it")]: use, [say("Close")]: undefined });
  };
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", offer);
  });
  let before = container.controller; // none on the first visit, when there is nothing to change over from
  container.addEventListener("controllerchange", () => {
    if (wanted) location.reload();
    else if (before) notify(say("Another tab has taken up a new version. Reload this page when it suits you."), { [say("Reload")]: () => location.reload(), [say("Close")]: undefined });
    before = container.controller;
  });
  offer();
}
