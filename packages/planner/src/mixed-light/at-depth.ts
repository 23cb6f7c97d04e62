import type { Underwater } from "../light/underwater.js";
import type { Estimate } from "../result/common.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Each } from "../uncertainty/figures.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00, verdictAt } from "./lights.js";
import { falloffStops, type Numbers } from "./numbers.js";
import { waysOut } from "./ways-out.js";

const DARK: Estimate = { low: 0, likely: 0, high: 0 };
/** From this on nothing is seen of the subject, and how much more it is means nothing. */
const MOST_HAZE_PERCENT = 1e6;

const atLeastZero = (e: Estimate): Estimate => mapRising(e, (x) => Math.max(0, x));
const fromLog2 = (e: Estimate, unit = 1): Estimate => mapRising(e, (l) => unit * 2 ** l);
/** Behind the subject, where the falloff of the lamps' light is told. */
const BEHIND_M = 1;

export type NumberEstimates = Each<Numbers, Estimate>;

export function mixedAtDepth(world: Underwater, depth_m: number, e: NumberEstimates): MixedLightAtDepth {
  const verdict = verdictAt(world, depth_m);
  const hasLamps = verdict !== "daylight_only";
  const mixed = hasLamps && verdict !== "lamps_only";
  return {
    depth_m,
    verdict,
    ...(mixed ? { verdict_clarity: clarity(e.split), ...compared(e) } : {}),
    lamp_illuminance_lx: hasLamps ? fromLog2(e.log2LampLux) : DARK,
    daylight_illuminance_lx: verdict === "lamps_only" ? DARK : fromLog2(e.log2DaylightLux),
    ...(hasLamps
      ? {
          lamp_red_water_loss_stops: e.waterRed,
          lamp_green_water_loss_stops: e.waterGreen,
          lamp_blue_water_loss_stops: e.waterBlue,
          lamp_falloff_1_m_behind_stops: falloffStops(world, BEHIND_M),
          lit_haze_percent: mapRising(fromLog2(e.log2LitHaze, 100), (percent) =>
            Math.min(MOST_HAZE_PERCENT, percent),
          ),
        }
      : {}),
    ways_out: verdict === "lights_fight" ? waysOut({ world, ...lightsAt(world, depth_m) }) : [],
  };
}

const compared = (e: NumberEstimates) => ({
  red_lamp_over_daylight_stops: e.red,
  green_lamp_over_daylight_stops: e.green,
  blue_lamp_over_daylight_stops: e.blue,
  split_delta_e00: atLeastZero(e.split),
  split_balanced_to_lamps_delta_e00: atLeastZero(e.splitToLamps),
  split_balanced_between_delta_e00: atLeastZero(e.splitBetween),
  red_excess_stops: e.redExcess,
});

/** Near a tie where the split may as well lie on the other side of what is visible. */
const clarity = ({ low, high }: Estimate): "clear" | "near_tie" =>
  low < VISIBLE_SPLIT_DELTA_E00 && high > VISIBLE_SPLIT_DELTA_E00 ? "near_tie" : "clear";
