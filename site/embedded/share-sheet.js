// Takes the place of scripts/share-sheet.js in an embedded page, which has no share button.
export const openSheet = () => {};
