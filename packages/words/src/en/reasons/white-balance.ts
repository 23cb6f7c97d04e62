import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, howOften, stops, strength } from "../format.js";
import { unsetBalanceReasons } from "./unset-balance.js";

/** Reasons on white balance. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  ...unsetBalanceReasons,
  balance_again: (p, u) =>
    `The light changes with depth. Going down, a ${strength(p.tolerance)} colour cast builds up ${howOften(p.times)}, first at ${depth(p.first_m, u)}: white-balance again then.`,
  one_balance_serves: () => "One white balance serves the whole range: a new one would gain little.",
  balance_in_reach: () => "The camera's white balance can make a card neutral over the whole range.",
  balance_falls_short: (p, u) =>
    `At ${depth(p.depth_m, u)} the camera's white balance falls short by ${stops(p.short_stops)} between channels. That leaves a ${strength(p.cast)} colour cast on grey: take it out in the edit.`,
};
