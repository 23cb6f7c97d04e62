/** Casts on grey along a dive: with the last balance, and with one made then and there. */
import { balanceReach, balanceToCard, kelvinGains } from "../camera/balance-reach.js";
import { castOfRaw } from "../camera/cast.js";
import type { Vector3 } from "../camera/matrix.js";
import type { Scene } from "../scene/scene.js";
import type { DiveWorld, OnLens } from "./dive-light.js";
import type { LightHere } from "./light-here.js";

/** A moment of a dive with what is on the lens. */
export interface Spot {
  lens: OnLens;
  time_s: number;
  depth_m: number;
}

/** Cast in CIEDE2000 as it is, and as a balance on the card would leave it. */
export interface Casts {
  before: number;
  after: number;
}

/** Only ratios of channels count: against green, so that no depth is too dark to be counted. */
const raw = (red: number, green: number, blue: number): Vector3 => [
  2 ** (red - green),
  1,
  2 ** (blue - green),
];
const cardOf = ({ red, green, blue }: LightHere): Vector3 => raw(red, green, blue);

const inverse = ([red, green, blue]: Vector3): Vector3 => [1 / red, 1 / green, 1 / blue];

/**
 * @param balanced where white was last set: it does not count for a camera that stands on a colour temperature or balances by itself
 */
export function castsAt(
  scene: Scene,
  { profile, at }: DiveWorld,
  balanced: Spot | undefined,
  spot: Spot,
): Casts {
  const reach = balanceReach(scene, profile);
  const here = at(spot.lens, spot.time_s, spot.depth_m);
  const seen = cardOf(here);
  const cast = (gains: Vector3): number => castOfRaw(profile, inverse(gains), seen);
  const after = cast(balanceToCard(reach, seen).gains);
  return { before: cast(gains()), after };

  function gains(): Vector3 {
    if (scene.white_balance_mode === "kelvin" && scene.white_balance_kelvin_K !== undefined)
      return kelvinGains(profile, scene.white_balance_kelvin_K);
    if (scene.white_balance_mode === "auto")
      return balanceToCard(reach, raw(here.wholeRed, here.wholeGreen, here.wholeBlue)).gains;
    const { lens, time_s, depth_m } = balanced ?? spot;
    return balanceToCard(reach, cardOf(at(lens, time_s, depth_m))).gains;
  }
}

/** A camera whose balance is set by hand, on a card. */
export const isOnCard = ({ white_balance_mode = "card" }: Scene): boolean => white_balance_mode === "card";
