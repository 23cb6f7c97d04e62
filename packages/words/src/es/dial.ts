import type { Setting } from "@sunfathom/planner";
import { dialFNumber, dialIso } from "../numbers/dial.js";
import { shown } from "./format.js";

export { dialFNumber, dialIso } from "../numbers/dial.js";

/** Tiempo de exposición: una fracción de segundo, o segundos. */
export const dialShutter = (shutter_s: number): string =>
  shutter_s < 1 ? `1/${Math.round(1 / shutter_s)} s` : `${shown(shutter_s, 1)} s`;

export const settings = (p: { iso: number; f_number: number }): string =>
  `ISO ${dialIso(p.iso)} a f/${dialFNumber(p.f_number)}`;

export const setting = (p: Setting): string =>
  `${settings(p)}${p.shutter ? ` y ${dialShutter(p.shutter.shutter_s)}` : ""}${p.behind ? " con el filtro ND" : ""}`;
