/**
 * What the planner says of the quiz's scenes, asked once each: they come from finite grids, so the memory is bounded (some
 * hundreds of answers), and a paper that takes milliseconds on a warm process must not wait for the same search again.
 */
import { attenuation, colourRecovery, filterChoice, mixedLight, whiteBalance } from "@sunfathom/planner";
import { remembered } from "./remember.js";

export const lightAt = remembered(attenuation);
export const filterFor = remembered(filterChoice);
export const mixAt = remembered(mixedLight);
export const balanceFor = remembered(whiteBalance);
export const redRecordedAt = remembered(colourRecovery);
