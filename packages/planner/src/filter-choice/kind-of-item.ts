import type { FilterKind, KitItem } from "../scene/scene.js";
import { kindOfCurve } from "./kind-of-curve.js";

/** What to call an item of a kit that is a filter: its kind, or the one that its measured curve is like. */
export const kindOfItem = ({ filter_kind, filter_transmittance = [] }: KitItem): FilterKind =>
  filter_kind ?? kindOfCurve(filter_transmittance);
