// Takes the place of scripts/theme.js in the site that is one file. What was chosen is taken up by open.js, because
// storage must not be touched this early.
"use strict";
document.documentElement.classList.add("js");
