/**
 * How the camera comes to its white balance: measured on a card, set in kelvin and left there, or found by itself. By itself it
 * takes the whole picture, subject, sea floor and open water, for grey on the average (Buchsbaum 1980, J. Franklin Inst. 310, 1),
 * as far as its limits go: makers do more, and do not say what.
 */
import type { Camera } from "../scene/scene.js";
import { type Balance, type BalanceReach, balanceToCard, kelvinGains, leftOn } from "./balance-reach.js";
import type { Vector3 } from "./matrix.js";
import type { SensorProfile } from "./sensor-profile.js";

type Measured = "card" | "auto";
/** Measured, or gains that are set once for all. */
export type BalanceSetting = Measured | { gains: Vector3 };

export function balanceSettingOf(
  { white_balance_mode = "card", white_balance_kelvin_K: cct_K }: Camera,
  profile: SensorProfile,
): BalanceSetting {
  if (white_balance_mode !== "kelvin") return white_balance_mode;
  if (cct_K === undefined) throw new RangeError("a balance in kelvin has no kelvin");
  return { gains: kelvinGains(profile, cct_K) };
}

/**
 * @param card raw values of a white card with the haze before it
 * @param whole mean raw values of the picture
 */
export function balanceOf(
  setting: BalanceSetting,
  reach: BalanceReach,
  card: Vector3,
  whole: () => Vector3,
): Balance {
  if (setting === "card") return balanceToCard(reach, card);
  const gains = setting === "auto" ? balanceToCard(reach, whole()).gains : setting.gains;
  return { gains, ...leftOn(gains, card) };
}

/** Ids of what a balance rests on beside the light (see `models`). */
export const balanceSources = ({ white_balance_mode }: Camera): string[] =>
  white_balance_mode === "auto" ? ["grey_world"] : [];
