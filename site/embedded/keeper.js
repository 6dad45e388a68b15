// Takes the place of scripts/keeper.js in an embedded page, which keeps nothing: the form is the link's.
import { formText } from "./address.js";
import { parse } from "../scripts/state.js";

export class Keeper {
  linked = false;
  mine = "";

  open() {
    return parse(formText());
  }

  follow() {}
  takeOther() {}
  keep() {}
  flush() {}
  decided() {}
}
