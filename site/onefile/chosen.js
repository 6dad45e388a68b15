// What the person chose earlier: the look and the language.

// Chromium 156, on a file, leaves storage that is touched before the browser has noted that the page is there without a
// way to the disk: all that is written is lost with the page. A question that the browser answers for this page comes back
// only after that.
async function noted() {
  const asked = navigator.storage?.persisted?.().catch(() => false);
  await Promise.race([asked, new Promise((done) => setTimeout(done, 2000))]);
}

/** The look and the language chosen, blank where none was. */
export async function chosen() {
  await noted();
  try {
    return { theme: localStorage.getItem("spraywright:theme") ?? "", language: localStorage.getItem("spraywright:language") ?? "" };
  } catch {
    return { theme: "", language: "" }; // no storage: the device's own stand
  }
}
