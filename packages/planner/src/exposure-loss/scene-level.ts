import { DOME_C, INCIDENT_C, type Spectrum, scale } from "@sunfathom/optics";
import { DOME_AS_FLAT } from "../light/daylight-at-depth.js";
import { METER_GREY, pictureMean } from "../light/picture-mean.js";
import type { Underwater } from "../light/underwater.js";

/**
 * What a meter in the housing averages over the picture, as the light on a solid subject that asks for the same exposure. Before
 * port and filter.
 * @param subject light on the subject, as a dome receptor meters it
 */
export const sceneLight = (world: Underwater, subject: Spectrum, depth_m: number): Spectrum =>
  scale(pictureMean(world, scale(subject, DOME_AS_FLAT), depth_m), DOME_C / INCIDENT_C / METER_GREY);
