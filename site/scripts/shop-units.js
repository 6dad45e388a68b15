// The units of the shop in use: every form that has none of its own is answered in them.
import { parse, store } from "./state.js";

const system = (form) => form.get("units") || "si";

/** The units that a form is answered in beyond its own, as keys and values; none where it has chosen otherwise. */
export function shopUnits(form) {
  const text = store.get("shop-units");
  if (!text) return [];
  const shop = parse(text);
  if (system(form) !== system(shop) || [...form.keys()].some((key) => key.startsWith("units."))) return [];
  return [...shop].filter(([key]) => key.startsWith("units."));
}

/** The form as the core is asked. */
export const withShopUnits = (form) => new Map([...form, ...shopUnits(form)]);

/** The unit in which a blank field asks, among those that its list offers; undefined for the usual one. */
export function wantedUnit(form, select) {
  const wanted = shopUnits(form).map(([, id]) => id);
  return wanted.length > 0 ? [...select.options].find((o) => wanted.includes(o.value))?.value : undefined;
}
