import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { MixedLightReasons } from "../codes/mixed-light.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import type { MixedLightAtDepth, MixedLightVerdict, MixedLightZone } from "../result/mixed-light.js";

type Reason = CodedReason<MixedLightReasons & LightReasons>;

const reason = reasonsOf<MixedLightReasons>();

/** From this share of a lit grey on, haze lit by the lamps spoils the picture: a judgement. */
const HAZE_SPOILS_FROM_PERCENT = 15;

export function mixedReasons(
  answers: Readonly<NonEmpty<MixedLightAtDepth>>,
  zones: readonly MixedLightZone[],
): Reason[] {
  const reasons: Reason[] = [];
  const firstOf = (verdict: MixedLightVerdict) => answers.find((a) => a.verdict === verdict);
  const lampsOnly = firstOf("lamps_only");
  if (lampsOnly) {
    reasons.push(
      reason("lamps_only", "computed", {
        red: lampsOnly.lamp_red_water_loss_stops?.likely ?? 0,
        green: lampsOnly.lamp_green_water_loss_stops?.likely ?? 0,
        blue: lampsOnly.lamp_blue_water_loss_stops?.likely ?? 0,
      }),
    );
  }
  if (firstOf("daylight_only")) reasons.push(reason("daylight_only", "computed"));
  const fight = firstOf("lights_fight");
  if (fight) {
    reasons.push(
      reason("lights_fight", "judgement", {
        depth_m: fight.depth_m,
        split: fight.split_delta_e00?.likely ?? 0,
        red_excess: fight.red_excess_stops?.likely ?? 0,
      }),
    );
  }
  for (const verdict of ["daylight_leads", "lamps_lead"] as const) {
    const leads = firstOf(verdict);
    const green = leads?.green_lamp_over_daylight_stops?.likely;
    if (leads && green !== undefined)
      reasons.push(reason(verdict, "computed", { depth_m: leads.depth_m, green }));
  }
  if (answers.some((a) => a.green_lamp_over_daylight_stops))
    reasons.push(reason("upright_subject", "computed"));
  const fighting = zones.find(({ verdict }) => verdict === "lights_fight");
  if (fighting && zones.length > 1) {
    reasons.push(
      reason("mixing_zone", "judgement", { from_m: fighting.min_depth_m, to_m: fighting.max_depth_m }),
    );
  }
  const haze = lastOf(answers).lit_haze_percent;
  if (haze && haze.likely > HAZE_SPOILS_FROM_PERCENT) {
    reasons.push(reason("lit_haze", "judgement", { percent: haze.likely, low: haze.low, high: haze.high }));
  }
  return reasons;
}
