import type { Setting } from "@sunfathom/planner";
import { dialFNumber, dialIso } from "../numbers/dial.js";
import { shown } from "./format.js";

export { dialFNumber, dialIso } from "../numbers/dial.js";

/** Belichtungszeit: ein Bruchteil einer Sekunde, oder Sekunden. */
export const dialShutter = (shutter_s: number): string =>
  shutter_s < 1 ? `1/${Math.round(1 / shutter_s)} s` : `${shown(shutter_s, 1)} s`;

export const settings = (p: { iso: number; f_number: number }): string =>
  `ISO ${dialIso(p.iso)} bei f/${dialFNumber(p.f_number)}`;

export const setting = (p: Setting): string =>
  `${settings(p)}${p.shutter ? ` und ${dialShutter(p.shutter.shutter_s)}` : ""}${p.behind ? " hinter dem ND-Filter" : ""}`;
