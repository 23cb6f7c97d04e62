/** What brings red into a recording. */

import { colourRecovery, type Scene } from "@sunfathom/planner";
import type { Given } from "../../item/item.js";
import { remembered } from "../../light/remember.js";
import { twoLamps } from "../../light/scenes.js";
import { lightOf, mixOf, n, s, sceneOf, there } from "./asked.test-support.js";

/** Red light that the sensor receives where it is too dark for these settings, so that the model leaves them as they are. */
const redWith = remembered((change: Partial<Scene>) => {
  const asked: Scene = { ...sceneOf("3C", 50, 18), iso: 200, f_number: 5.6, ...change };
  const recordings = there(colourRecovery(asked).depths[0]).recordings;
  const wanted = change.filter_kind ? "filter_same_settings" : "no_filter";
  const found = there(recordings.find((r) => r.recording === wanted));
  return found.red_electrons * found.red_above_600_nm_share;
});
export const bringsRed: Record<string, (given: Given) => boolean> = {
  aperture: () => redWith({ f_number: 4 }) > 1.5 * redWith({}),
  shutter: () => redWith({ shutter_s: 1 / 25 }) > 1.5 * redWith({}),
  iso: () => redWith({ iso: 400 }) > 1.01 * redWith({}),
  filter: () => redWith({ filter_kind: "red", filter_density: 0.9 }) > 1.01 * redWith({}),
  shallower: (given) => {
    const loss = (depth_m: number) =>
      there(lightOf(sceneOf(s(given, "water"), 50, depth_m)).depths[0]).red_loss_stops.likely;
    return loss(n(given, "shallower_m")) < loss(n(given, "depth_m")) - 0.1;
  },
  lamp: (given) => {
    const asked = {
      ...sceneOf(s(given, "water"), 50, n(given, "depth_m")),
      lamps: [twoLamps(n(given, "lamp_m"))],
    };
    return there(there(mixOf(asked).depths[0]).red_lamp_over_daylight_stops).low > -6;
  },
  // Both act after the sensor.
  balance: () => false,
  grade: () => false,
};

const SUN_DEG = 50;
/** Whether it brings a stop more red light, or more than that. */
export const bringsTwiceTheRed: Record<string, (amounts: number[], given: Given) => boolean> = {
  aperture: ([from = 1, to = 1]) => (from / to) ** 2 >= 1.9,
  shutter: ([from = 1, to = 1]) => from / to >= 2,
  shallower: ([to_m = 0], given) => {
    const left = (depth_m: number): number =>
      there(lightOf(sceneOf(s(given, "water"), SUN_DEG, depth_m)).depths[0]).red_left_percent.likely;
    return left(to_m) >= 2 * left(n(given, "depth_m"));
  },
  lamp: ([lamp_m = 1], given) => {
    const asked = {
      ...sceneOf(s(given, "water"), SUN_DEG, n(given, "depth_m")),
      lamps: [twoLamps(lamp_m)],
    };
    return there(there(mixOf(asked).depths[0]).red_lamp_over_daylight_stops).low >= 0;
  },
};
