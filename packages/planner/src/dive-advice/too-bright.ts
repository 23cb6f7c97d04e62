import type { ExposureAtDepth } from "../result/exposure-loss.js";

/** What takes too much light away. */
export interface TooBright {
  depth_m: number;
  excess_stops: number;
  /** Neutral density. */
  density: number;
  /** Aperture that would do instead, where the lens goes that far. */
  f_number?: number;
}

/** Undefined where the light at this depth is not too much for the camera. */
export function tooBright(exposure: ExposureAtDepth): TooBright | undefined {
  const { depth_m, excess_stops, neutral_density_needed: density, ways_to_pay } = exposure;
  if (excess_stops === undefined || density === undefined) return undefined;
  const closed = ways_to_pay.find(({ way, enough }) => way === "aperture" && enough)?.f_number;
  return {
    depth_m,
    excess_stops: excess_stops.likely,
    density,
    ...(closed === undefined ? {} : { f_number: closed }),
  };
}
