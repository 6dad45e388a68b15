// The readings of the gauge bench as they stand in its form: texts, which only the core reads.
const table = "reading.", column = "gauge_reading";

/** How many the core takes. */
export const most = 200;

/** The readings in a form in their order, each { text, unit }; the unit is blank for the field's own. */
export function readingsIn(values) {
  const rows = [...new Set([...values.keys()].filter((key) => key.startsWith(table)).map((key) => key.split(".")[1]))].filter((n) => n !== column);
  const whole = values.get(`${table}${column}.unit`) ?? "";
  const one = (n) => ({ text: values.get(`${table}${n}.${column}`) ?? "", unit: values.get(`${table}${n}.${column}.unit`) ?? whole });
  return rows.sort((a, b) => a - b).map(one).filter((r) => r.text);
}

/** What a form holds beside the readings. */
export const givenIn = (values) => new Map([...values].filter(([key]) => !key.startsWith(table)));

/** The form of what is given and of readings. */
export function together(given, readings) {
  const form = new Map(given);
  readings.forEach((r, i) => {
    form.set(`${table}${i + 1}.${column}`, r.text);
    if (r.unit) form.set(`${table}${i + 1}.${column}.unit`, r.unit);
  });
  return form;
}

/** The place of the reading that a problem is about, counted from 1 as text. */
export const placeOf = (problem) => problem.field.split(".")[1];
