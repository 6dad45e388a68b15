// What is fetched when it is first used may not come.
import { say } from "./words.js";

/** Why something did not come, for the person: a browser's own words are in its own language, ours are as they are. */
export const whyNot = (error) => (error instanceof TypeError ? say("It could not be loaded. Check the connection, and try again.") : error.message);
