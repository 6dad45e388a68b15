// Takes the place of scripts/pwa.js in the site that is one file: it is on the device already, and never asks for
// anything.
import { sayKept } from "../scripts/persist.js";
import { say } from "../scripts/words.js";

export const keepOffline = () => sayKept(say("This is the whole site in one file: it works without a network."));
