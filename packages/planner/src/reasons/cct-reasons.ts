import { CCT_MEANINGFUL_DUV } from "@sunfathom/optics";
import type { Reason } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import { lightReason } from "./light-reason.js";

interface LightAtDepth {
  depth_m: number;
  duv: number;
  cct_K?: number;
}

/** Why no colour temperature is given from some depth on; empty where one is given throughout. */
export function cctReasons(depths: readonly LightAtDepth[]): Reason<LightReasons>[] {
  const first = depths.find(({ cct_K }) => cct_K === undefined);
  if (!first) return [];
  const { depth_m, duv } = first;
  return Math.abs(duv) > CCT_MEANINGFUL_DUV
    ? [lightReason("cct_without_meaning", "computed", { depth_m, duv })]
    : [lightReason("cct_beyond_locus", "computed", { depth_m })];
}
