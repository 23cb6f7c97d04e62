import { multiply, type Spectrum, STAND_INS, standInReflectances } from "@sunfathom/optics";
import { balanceReach, balanceToCard } from "../camera/balance-reach.js";
import { castOfRaw } from "../camera/cast.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import type { BalanceOnStandIn } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

/** What can stand in for a card in this light, the least cast on grey first. */
export function standInsIn(scene: Scene, light: Spectrum): BalanceOnStandIn[] {
  const profile = sensorProfile(sensorOf(scene, NOMINAL));
  const reach = balanceReach(scene, profile);
  const grey = rawOf(profile, light);
  const castAfter = (reflectance: Spectrum): number => {
    const { gains } = balanceToCard(reach, rawOf(profile, multiply(light, reflectance)));
    return castOfRaw(profile, [1 / gains[0], 1 / gains[1], 1 / gains[2]], grey);
  };
  return STAND_INS.map((stand_in): BalanceOnStandIn => {
    const [likely, ...others] = standInReflectances(stand_in);
    const cast_left_delta_e00 = castAfter(likely);
    if (others.length === 0) return { stand_in, cast_left_delta_e00 };
    const all = [cast_left_delta_e00, ...others.map(castAfter)];
    return {
      stand_in,
      cast_left_delta_e00,
      least_cast_delta_e00: Math.min(...all),
      most_cast_delta_e00: Math.max(...all),
    };
  }).sort((a, b) => a.cast_left_delta_e00 - b.cast_left_delta_e00);
}
