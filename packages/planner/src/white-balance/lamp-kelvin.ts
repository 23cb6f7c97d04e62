import { cctDuv, chromaticity, multiply, xyzOf } from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { sensorOf } from "../camera/sensor.js";
import { sensorProfile } from "../camera/sensor-profile.js";
import type { Conditions } from "../light/conditions.js";
import { lampsAtPort } from "../light/lamps.js";
import { lampLightAt, towardsCamera, type Underwater, underwater } from "../light/underwater.js";
import type { WhiteBalanceFigures } from "../result/white-balance.js";
import { causesOf } from "../uncertainty/causes.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate } from "../uncertainty/propagate.js";

/** Cast on a grey card when the camera is set to the lamps' own colour and the water between is left out of account. */
function leftByKelvin(world: Underwater): number {
  const arriving = multiply(lampLightAt(world), towardsCamera(world));
  return castBetween(
    sensorProfile(sensorOf(world.scene, world.nuisance)),
    lampsAtPort(world.scene.lamps),
    arriving,
  );
}

/** The kelvin setting for the lamps and what it would leave; the setting is absent where their light has no such temperature. */
export function lampKelvin(
  conditions: Conditions,
): Pick<WhiteBalanceFigures, "lamp_kelvin_setting_K" | "lamp_kelvin_leaves_delta_e00"> {
  const { x, y } = chromaticity(xyzOf(lampsAtPort(conditions.scene.lamps)));
  const { cct_K } = cctDuv(x, y);
  if (cct_K === undefined) return {};
  const { estimates } = propagate(
    (nuisance) => ({ left: leftByKelvin(underwater(conditions, nuisance)) }),
    causesOf(conditions),
  );
  return {
    lamp_kelvin_setting_K: cct_K,
    lamp_kelvin_leaves_delta_e00: mapRising(estimates.left, (e) => Math.max(0, e)),
  };
}
