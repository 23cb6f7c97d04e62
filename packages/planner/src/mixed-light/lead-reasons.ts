import { type Reason, reasonsOf } from "../codes/coded.js";
import type { MixedLightReasons } from "../codes/mixed-light.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";

const reason = reasonsOf<MixedLightReasons>();

/** What it takes to lead, at the shallow end, where daylight is brightest, and at the deep end. */
export function leadReasons(
  { wanted_lead_stops: stops, wanted_lead_distance_m: distance_m }: Scene,
  depths: Readonly<NonEmpty<MixedLightAtDepth>>,
): Reason<MixedLightReasons>[] {
  if (stops === undefined || distance_m === undefined) return [];
  const ends = depths.length > 1 ? [depths[0], lastOf(depths)] : [depths[0]];
  return ends.flatMap(({ depth_m, lumens_needed_lm, lumens_verdict, own_lamps_lead_from_m: own }) => {
    if (!lumens_needed_lm || !lumens_verdict) return [];
    const { likely, low, high } = lumens_needed_lm;
    const closer = own === undefined || lumens_verdict === "enough" ? {} : { closer: { distance_m: own } };
    const parameters = { depth_m, distance_m, stops, likely_lm: likely, low_lm: low, high_lm: high };
    // What lights for diving can give is a judgement; what the caller's own give is not.
    const basis = lumens_verdict === "enough" || lumens_verdict === "closer" ? "computed" : "judgement";
    return [reason("to_lead", basis, { ...parameters, verdict: lumens_verdict, ...closer })];
  });
}
