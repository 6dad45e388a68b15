// A page of the site that is shown inside another page. What is kept on a device shall not be within a stranger's reach, so
// it shows nothing but a way out; hosts that send headers do not let it come that far. embed.html is what others may frame.
import { el } from "./dom.js";
import { say } from "./words.js";

document.body.replaceChildren(el("main", {},
  el("p", {}, say("This page is not shown inside other pages.")),
  el("p", {}, el("a", { class: "action", href: location.href, target: "_blank", rel: "noopener" }, say("Open it by itself")))));
await new Promise(() => {}); // nothing else runs
