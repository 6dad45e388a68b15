// Puts a calculator into a page:
//
//	<script src="…/embed.js" data-show="frame.of=wet-film&amp;coats=2" async></script>
//
// makes a frame where the script stands, as high as what is in it. data-language="es" picks a language, data-title names
// the frame, and data-sandbox cuts it off from all storage. What the frame tells comes out of it as an event,
// "spraywright", whose detail is the message.
"use strict";
(() => {
  const script = document.currentScript;
  const { show = "", language = "en", title = "", sandbox } = script.dataset;
  const folder = /^[a-z]{2}$/.test(language) && language !== "en" ? language + "/" : "";
  const address = new URL(`${folder}embed.html#${show}`, script.src);
  const frame = document.createElement("iframe");
  frame.title = title || new URLSearchParams(show).get("frame.title") || new URLSearchParams(show).get("frame.of") || "Spraywright";
  frame.referrerPolicy = "no-referrer";
  if (sandbox !== undefined) frame.setAttribute("sandbox", "allow-scripts");
  frame.width = "100%"; // attributes, which no policy on styles forbids
  frame.height = "480";
  frame.setAttribute("frameborder", "0");
  const origin = sandbox === undefined ? address.origin : "null";
  addEventListener("message", (event) => {
    if (event.source !== frame.contentWindow || event.origin !== origin) return;
    const message = event.data;
    if (typeof message !== "object" || message?.spraywright !== 1) return;
    if (message.kind === "height" && message.height > 0 && message.height < 1e5) frame.height = String(Math.ceil(message.height));
    frame.dispatchEvent(new CustomEvent("spraywright", { detail: message, bubbles: true }));
  });
  frame.src = address.href;
  script.after(frame);
})();
