// Hands on the address of the page, which holds the whole form.
import { notify } from "./notices.js";

export function offerSharing(button, flush) {
  button.addEventListener("click", async () => {
    flush(); // so that the address is up to date
    const url = location.href;
    if (navigator.share) {
      try {
        await navigator.share({ title: document.title, url });
        return;
      } catch (error) {
        if (error.name === "AbortError") return; // thought better of it
      }
    }
    try {
      await navigator.clipboard.writeText(url);
      notify("Link copied. Whoever opens it sees this form and its answer.");
    } catch {
      notify("Copy the address of this page: it holds the whole form.");
    }
  });
}
