// The build of the site puts its name and the hashes of what scripts fetch in place of this file.
export const build = "";
export const sums = {};
