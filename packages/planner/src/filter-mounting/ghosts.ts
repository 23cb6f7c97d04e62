/** Light that goes to and fro once between two uncoated surfaces (Fresnel, exact): how far below the picture its ghost lies. */
import { fresnelReflectance, WATER_INDEX } from "@sunfathom/optics";
import type { MountPlace } from "../result/filter-mounting.js";
import { type Reason, reason } from "./reason.js";

/** Acrylic 1.49, crown glass 1.52: from memory of handbooks. */
const GLASS_INDEX = 1.5;

/** In stops below the light that makes it. */
export const ghostStops = (index: number): number => -2 * Math.log2(fresnelReflectance(0, index));

const in_air_stops = ghostStops(GLASS_INDEX);
const in_water_stops = ghostStops(GLASS_INDEX / WATER_INDEX);

export const ghostReason = (place: MountPlace): Reason =>
  place === "on_lens"
    ? reason("ghosts_inside", "computed", { in_air_stops })
    : reason("ghosts_outside", "computed", { in_water_stops, in_air_stops });
