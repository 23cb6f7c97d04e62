import type { Setting } from "@sunfathom/planner";
import { dialFNumber, dialIso } from "../numbers/dial.js";
import { shown } from "./format.js";

export { dialFNumber, dialIso } from "../numbers/dial.js";

/** Temps de pose : une fraction de seconde, ou des secondes. */
export const dialShutter = (shutter_s: number): string =>
  shutter_s < 1 ? `1/${Math.round(1 / shutter_s)} s` : `${shown(shutter_s, 1)} s`;

export const settings = (p: { iso: number; f_number: number }): string =>
  `${dialIso(p.iso)} ISO à f/${dialFNumber(p.f_number)}`;

export const setting = (p: Setting): string =>
  `${settings(p)}${p.shutter ? ` et ${dialShutter(p.shutter.shutter_s)}` : ""}${p.behind ? " derrière le filtre ND" : ""}`;
