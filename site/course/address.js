// Takes the place of scripts/address.js in a course package: the set of exercises stands in the page itself, because what
// follows the page's address belongs to the course.

export const pageKey = "page";
export const formText = () => document.getElementById("set").textContent;
export const withForm = () => location.href.split("#")[0];
export const query = () => new URLSearchParams();
export const dropQuery = () => {};
export const go = () => {};
export const shareable = false;
export const turn = () => false;
