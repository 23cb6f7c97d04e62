/** What moves white, and so asks for a new balance. */

import { atNight } from "@sunfathom/fixtures/scenes";
import { filterTransmittance, integrate, integrateProduct, meanSensor } from "@sunfathom/optics";
import type { Scene } from "@sunfathom/planner";
import type { Given } from "../../item/item.js";
import { remembered } from "../../light/remember.js";
import { twoLamps } from "../../light/scenes.js";
import { balanceOf, mixOf, n, s, same, sceneOf, there } from "./asked.test-support.js";

/** By how much white would shift, between the channel that gains most and the one that loses most, in stops. */
type Gains = Record<"red" | "green" | "blue", number>;
const shiftStops = (a: Gains, b: Gains): number => {
  const steps = (["red", "green", "blue"] as const).map((channel) => Math.log2(a[channel] / b[channel]));
  return Math.max(...steps) - Math.min(...steps);
};
/** A camera that can balance a card anywhere. */
const ANY_BALANCE = {
  white_balance_min_cct_K: 1500,
  white_balance_max_cct_K: 40000,
  white_balance_max_duv: 0.15,
};
/** By so much white shifts where a new balance is due. */
const DUE_STOPS = 0.3;
const gainsOf = (asked: Scene) => {
  const at = there(balanceOf(asked).depths[0]);
  return { red: at.red_gain.likely, green: at.green_gain.likely, blue: at.blue_gain.likely };
};
const shifted = (water: string, from_m: number, to_m: number): boolean =>
  shiftStops(
    gainsOf({ ...sceneOf(water, 50, from_m), ...ANY_BALANCE }),
    gainsOf({ ...sceneOf(water, 50, to_m), ...ANY_BALANCE }),
  ) > DUE_STOPS;
/** What a white card gives in the red and the green channel behind a filter. */
const throughFilter = (kind: "red" | "magenta") => {
  const { red, green } = meanSensor();
  const t = filterTransmittance(kind, 0.9);
  const left = (channel: Float64Array) => integrateProduct(t, channel) / integrate(channel);
  return Math.abs(Math.log2(left(red) / left(green)));
};
export const changesWhite: Record<string, (words: string[]) => boolean> = {
  descend: ([water, from, to]) => shifted(there(water), Number(from), Number(to)),
  ascend: ([water, from, to]) => shifted(there(water), Number(from), Number(to)),
  little: ([water, from, to]) => shifted(there(water), Number(from), Number(to)),
  lamps_on: ([water, depth]) =>
    there(mixOf({ ...sceneOf(there(water), 50, Number(depth)), lamps: [twoLamps(0.5)] }).depths[0])
      .verdict === "lamps_lead",
  filter_on: ([kind]) => throughFilter(kind as "red" | "magenta") > 0.5,
  level: ([depth]) =>
    shiftStops(gainsOf(sceneOf("II", 50, Number(depth))), gainsOf(sceneOf("II", 50, Number(depth)))) > 0,
  night_descend: ([from, to]) => {
    const loss = (depth_m: string | undefined) => {
      const asked = { ...atNight(sceneOf("II", 50, Number(depth_m))), lamps: [twoLamps(0.8)] };
      return there(there(mixOf(asked).depths[0]).lamp_red_water_loss_stops).likely;
    };
    return !same(loss(from), loss(to));
  },
  // Neither the subject's colour nor ISO is part of the light on a card.
  subject: () => false,
  iso: () => false,
};

/** What a white card shows of lamp light that came this far: red against green, in stops. */
const lampRedOverGreen = remembered((water: string, distance_m: number): number => {
  const asked = { ...atNight(sceneOf(water, 50, 15)), lamps: [twoLamps(distance_m)] };
  const at = there(mixOf(asked).depths[0]);
  return there(at.lamp_red_water_loss_stops).likely - there(at.lamp_green_water_loss_stops).likely;
});
/** What the light on a card depends on, case by case. */
export const balanceHangsOn: Record<string, (given: Given) => string> = {
  night: () => "once",
  moving: (given) => {
    const water = s(given, "water");
    const more = lampRedOverGreen(water, n(given, "far_m")) - lampRedOverGreen(water, n(given, "near_m"));
    return more > 0.2 ? "distance" : "once";
  },
  day: (given) => (shifted(s(given, "water"), n(given, "from_m"), n(given, "to_m")) ? "depth" : "once"),
};
