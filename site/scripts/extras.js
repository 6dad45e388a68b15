// What a calculator's page offers beside its form and answer. Each part listens for the page's "answer" event, whose
// detail is { id, form, report, whole, current }, and may send it a "fill" event with { values, says }: texts by key, and the notice
// that tells the person what was filled in. whole() promises the report with its working; current says whether the form still
// asks what was answered.

import { handing } from "./customer-part.js";
import { offerLessons } from "./lesson-part.js";
import { offerDay } from "./day-offer.js";
import { offerLogging } from "./log-offer.js";
import { nudging } from "./nudge.js";
import { offerPaper } from "./paper.js";
import { shelf } from "./shelf-part.js";
import { offerTimers } from "./timer-button.js";

const parts = [nudging, shelf, offerTimers, offerDay, offerLogging, offerPaper, offerLessons, handing];

export function attach(main) {
  for (const part of parts) part(main);
}
