// What the page of a supplier adds beside its form: loaded on that page alone.

export function handing(main) {
  if (main.dataset.calculator !== "customer-sheets") return;
  let last;
  const ready = import("./customer.js").then(({ Handing }) => new Handing(main));
  main.addEventListener("answer", ({ detail }) => {
    last = detail;
    ready.then((handed) => handed.show(last));
  });
}
