import type { Setting } from "@sunfathom/planner";
import { dialFNumber, dialIso } from "../numbers/dial.js";
import { shown } from "./format.js";

export { dialFNumber, dialIso } from "../numbers/dial.js";

/** Temps de pose : une fraction de seconde, ou des secondes. */
export const dialShutter = (shutter_s: number): string =>
  shutter_s < 1 ? `1/${Math.round(1 / shutter_s)} s` : `${shown(shutter_s, 1)} s`;

/** « 200 ISO et f/8 » */
export const settings = (p: { iso: number; f_number: number }): string =>
  `${dialIso(p.iso)} ISO et f/${dialFNumber(p.f_number)}`;

/** « 200 ISO, f/8 et 1/50 s » */
export const timed = (p: { iso: number; f_number: number; shutter_s: number }): string =>
  `${dialIso(p.iso)} ISO, f/${dialFNumber(p.f_number)} et ${dialShutter(p.shutter_s)}`;

export const setting = (p: Setting): string =>
  `${p.shutter ? timed({ ...p, ...p.shutter }) : settings(p)}${p.behind ? " avec le filtre ND" : ""}`;
