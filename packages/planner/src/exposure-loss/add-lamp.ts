import { illuminance_lx, multiply, peakIntensity_cd, perLumen, whiteLampPerLumen } from "@sunfathom/optics";
import { codesOf } from "../codes/coded.js";
import type { WaysToPay } from "../codes/ways-to-pay.js";
import type { Conditions } from "../light/conditions.js";
import { aimAt } from "../light/lamp-aim.js";
import { beamShareAt } from "../light/lamps.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { underwater } from "../light/underwater.js";
import { USUAL_LAMP } from "../light/usual-lamp.js";
import type { WayToPay } from "../result/exposure-loss.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { budgetAt } from "./budget.js";

const say = codesOf<WaysToPay>();

/**
 * Flux of a wide lamp at arm's length that lifts the subject to what is wanted.
 * @param dark stops that are missing at a depth
 */
export function addLamp(dark: { conditions: Conditions; depth_m: number; missing: number }): WayToPay {
  const { conditions, depth_m, missing } = dark;
  const world = underwater(conditions, NOMINAL);
  const budget = budgetAt(world, lensFilterOf(conditions.scene, NOMINAL), depth_m);
  // What a lamp adds has to lift subject and haze together.
  const wanted_lx = 2 ** (budget.log2SubjectLux + budget.hazeGain) * (2 ** missing - 1);
  const left = world.path_per_m.map((k) => Math.exp(-k * USUAL_LAMP.distance_m));
  const throughWater = illuminance_lx(multiply(perLumen(whiteLampPerLumen(USUAL_LAMP.cct_K)), left));
  const share = beamShareAt(
    USUAL_LAMP.beam_angle_deg,
    USUAL_LAMP.distance_m,
    aimAt(conditions.scene, NOMINAL),
  );
  const intensity_cd = peakIntensity_cd(1, USUAL_LAMP.beam_angle_deg) * share;
  const lux_per_lm = (intensity_cd / USUAL_LAMP.distance_m ** 2) * throughWater;
  const lamp_flux_lm = wanted_lx / lux_per_lm;
  return {
    way: "lamp",
    ...say("add_lamp", {
      flux_lm: lamp_flux_lm,
      beam_angle_deg: USUAL_LAMP.beam_angle_deg,
      distance_m: USUAL_LAMP.distance_m,
    }),
    gains_stops: missing,
    enough: true,
    lamp_flux_lm,
  };
}
