// The supplier's page: the link that a customer's phone opens, as text, QR code, counter card and HTML, and the calculator
// as it will stand there.
import { shareable } from "./address.js";
import { byId, copy, el, fill } from "./dom.js";
import { formFor, sheetsOf, targetOf } from "./handed.js";
import { whyNot } from "./loading.js";
import { notify } from "./notices.js";
import { linkTo } from "./share.js";
import { linkTag, frameAddress, scriptTag } from "./snippet.js";
import { write } from "./state.js";
import { say } from "./words.js";

const words = { go: say("Go"), wait: say("Wait"), stop: say("Stop") };
const language = document.documentElement.lang;

export class Handing {
  #form = new Map();
  #report;
  #code; // { link, rulings, short, picture }

  constructor(main) {
    byId("handing").hidden = false;
    byId("handing").addEventListener("click", ({ target }) => this.#act(target.closest("[data-hand]")?.dataset.hand));
    byId("customer-preview")?.addEventListener("toggle", () => this.#preview());
    byId("customer-link").addEventListener("focus", ({ target }) => target.select());
    main.querySelector("#paper-tools").hidden = true;
  }

  // The same form on the customer's page.
  get #link() {
    return linkTo(this.#form).replace(/customer-sheets(?=(\.html)?[#&])/, "received");
  }

  get #show() {
    const target = targetOf(this.#form.get("opens"));
    const options = new Map([["frame.of", target.of]]);
    return write(options) + "&" + write(formFor(target, sheetsOf(this.#form), this.#form.get("units")));
  }

  show({ form, report }) {
    this.#form = form;
    this.#report = report;
    const whole = report.problems.length === 0 && !report.verdict.some((r) => r.level === "stop");
    byId("handing-link").hidden = !whole;
    byId("handing-needs").hidden = whole;
    if (!whole) return;
    const link = this.#link;
    byId("customer-link").value = byId("customer-sees").href = link;
    if (byId("customer-tag")) this.#write(link, say("Data sheets from {sender}", { sender: form.get("sender") }));
    if (this.#code?.link !== link) {
      byId("customer-code").replaceChildren();
      byId("customer-verdict").replaceChildren();
    }
  }

  // For another web page, which the site in one file has nothing for.
  #write(link, title) {
    byId("customer-tag").value = linkTag(link, title);
    byId("customer-script").value = scriptTag({ show: this.#show, language, title });
    this.#preview();
  }

  // The frame is made anew, because what it shows is all in its address.
  #preview() {
    const place = byId("customer-frame"), address = frameAddress(this.#show, language);
    if (!byId("customer-preview").open) place.replaceChildren();
    else if (place.firstChild?.src !== address) place.replaceChildren(el("iframe", { src: address, title: say("The calculator, as it opens"), width: "100%", height: "600" }));
  }

  async #act(what) {
    try {
      if (what === "copy") await this.#hand(this.#link, byId("customer-link"));
      if (what === "tag" || what === "script") await this.#hand(byId("customer-" + what).value, byId("customer-" + what));
      if (what === "code") this.#draw(await this.#drawn());
      if (what === "short") await this.#hand((await this.#drawn()).short ?? this.#link, byId("customer-link"));
      if (what === "card") this.#card(await this.#drawn());
    } catch (error) {
      notify(whyNot(error));
    }
  }

  async #drawn() {
    const link = this.#link, { codeOf } = await import("./share-code.js");
    if (this.#code?.link !== link) this.#code = { link, ...(await codeOf(link)) };
    return this.#code;
  }

  async #draw({ picture, rulings }) {
    const { codePicture } = await import("./share-code.js");
    byId("customer-code").replaceChildren(...(picture ? [codePicture(picture)] : []));
    byId("customer-verdict").replaceChildren(...rulings.map((r) => {
      const item = copy("part-ruling");
      item.classList.add(r.level);
      item.querySelector("details").remove();
      return fill(item, { word: words[r.level], why: r.why, do: r.do });
    }));
  }

  async #hand(text, box) {
    try {
      await navigator.clipboard.writeText(text);
      notify(shareable ? say("Copied.") : say("Copied without an address, because this file has none that others can open. Put it behind the address of any copy, of this file or of the site."));
    } catch {
      box.value = text;
      box.focus();
      box.select();
      notify(say("Copy it by hand: it is marked."));
    }
  }

  // A card for the counter, on a sheet of A6 or in the corner of a larger one.
  async #card(code) {
    if (!code.picture || !code.readable) {
      await this.#draw(code);
      return;
    }
    const { codePicture } = await import("./share-code.js");
    const told = (key) => this.#report.figures.find((f) => f.key === key)?.text ?? "";
    const page = el("div", { id: "counter-card", class: "paper" },
      el("p", { class: "counter-from" }, told("said_from")),
      el("h2", {}, say("Data sheets for your phone")),
      el("ul", {}, ...sheetsOf(this.#form).map((sheet) => el("li", {}, sheet.name))),
      el("div", { class: "counter-code" }, codePicture(code.picture)),
      el("p", {}, say("Point your phone’s camera at the code and open the link. The sheets fill the forms of {calculator}; keep them on your phone if you like. It works without a network once it has been opened.", { calculator: told("said_opens") })),
      told("said_note") ? el("p", { class: "counter-note" }, told("said_note")) : "",
      el("p", { class: "mind" }, say("The data sheet and the safety data sheet come first.")));
    document.documentElement.dataset.paper = "counter-card";
    document.body.append(page);
    addEventListener("afterprint", () => {
      page.remove();
      delete document.documentElement.dataset.paper;
    }, { once: true });
    print();
  }
}
