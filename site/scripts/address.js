// What the address holds after its "#": the form, as text. In the site that is one file it names the page as well,
// and the build puts another module with the same exports in place of this one.

/** The key that names a page in the one file. No form has it. */
export const pageKey = "page";

/** The text of the form in the address. */
export const formText = () => location.hash.slice(1);

/** The address of this page with a form. */
export const withForm = (text) => location.href.split("#")[0] + (text && "#" + text);

/** What stands after the page's "?". */
export const query = () => new URLSearchParams(location.search);

/** Takes that out of the address once it has been read. */
export const dropQuery = () => history.replaceState(null, "", location.pathname + location.hash);

/** Goes to a page of the site. */
export const go = (page) => { location.href = page; };

/** Whether another device can open an address made here. */
export const shareable = true;

/** A form that comes from the one file names its page: goes there. Reports whether it does. */
export function turn() {
  const form = new URLSearchParams(formText()), name = form.get(pageKey);
  if (!/^[a-z][a-z/-]*$/.test(name ?? "")) return false;
  form.delete(pageKey);
  const goal = new URL(`../${name}.html#${form}`, import.meta.url);
  if (goal.pathname === location.pathname) { // this very page, which would not be loaded anew
    history.replaceState(null, "", goal);
    return false;
  }
  location.replace(goal);
  return true;
}
