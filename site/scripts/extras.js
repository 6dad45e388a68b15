// What a calculator's page offers beside its form and answer. Each part listens for the page's "answer" event, whose
// detail is { id, form, report }, and may send it a "fill" event with { values, says }: texts by key, and the notice
// that tells the person what was filled in.

const parts = [];

export function attach(main) {
  for (const part of parts) part(main);
}
