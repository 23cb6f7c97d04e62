/** The right answers to questions on dives and practice once more, by another way: see another-route.test-support.ts. */

import { atNight } from "@sunfathom/fixtures/scenes";
import { colourRecovery, exposureLoss, mixedLight, type Scene, whiteBalance } from "@sunfathom/planner";
import type { Choice, Given } from "../item/item.js";
import { remembered } from "../light/remember.js";
import { twoLamps } from "../light/scenes.js";
import { n, s, sceneOf } from "./another-route/asked.test-support.js";

const SUN_DEG = 50;
const ANY_BALANCE = {
  white_balance_min_cct_K: 1500,
  white_balance_max_cct_K: 40000,
  white_balance_max_duv: 0.15,
};

/** Red over green of a white card there, in stops, as the balance finds it. */
const redBehind = remembered((water: string, depth_m: number): number => {
  const { red_gain, green_gain } = whiteBalance({ ...sceneOf(water, SUN_DEG, depth_m), ...ANY_BALANCE })
    .depths[0];
  return Math.log2(red_gain.likely) - Math.log2(green_gain.likely);
});
const lampRedLoss = (depth_m: number): number =>
  mixedLight({ ...atNight(sceneOf("II", SUN_DEG, depth_m)), lamps: [twoLamps(1)] }).depths[0]
    .lamp_red_water_loss_stops?.likely ?? Number.NaN;
const hazeAt = remembered((distance_m: number): number => {
  const scene = { ...sceneOf("II", SUN_DEG, 12), subject_distance_m: distance_m };
  return (
    mixedLight({ ...scene, lamps: [twoLamps(distance_m)] }).depths[0].lit_haze_percent?.likely ?? Number.NaN
  );
});
const recorded = remembered((water: string, depth_m: number, bits: number) => {
  const [recording] = colourRecovery({ ...sceneOf(water, SUN_DEG, depth_m), bits }).depths[0].recordings;
  if (recording === undefined) throw new Error("Nothing was recorded.");
  return recording;
});

/** Common practice of the trade, no published source; written down here by hand. */
const KEEPS_SPECKS_DOWN = new Set(["arms", "outward", "clear_of_sand", "dim_by_day", "behind_port"]);
const LATER = new Set(["later_balance", "later_sharpening"]);
const NO_FILE_HOLDS = new Set(["clipped", "smear", "two_lights"]);

export const DIVE_CHOICE: Record<string, (option: Choice, given: Given) => boolean> = {
  kept_balance: ({ value }, given) => {
    if ("from_stops" in given) {
      const strong = n(given, "from_stops") - n(given, "to_stops");
      const [way, stops] = String(value).split(" ");
      return (way === "strong" ? 1 : -1) * Number(stops) === Number(strong.toFixed(1));
    }
    const [from_m, to_m] = [n(given, "from_m"), n(given, "to_m")];
    const shift =
      s(given, "case") === "night"
        ? lampRedLoss(from_m) - lampRedLoss(to_m)
        : redBehind(s(given, "water"), from_m) - redBehind(s(given, "water"), to_m);
    return value === (Math.abs(shift) < 0.2 ? "same" : shift > 0 ? "red" : "cold");
  },
  lamp_place: ({ value }) => {
    if (value === "closer") return hazeAt(0.5) < 0.5 * hazeAt(1);
    if (value === "back_off") return hazeAt(2) < hazeAt(1);
    return KEEPS_SPECKS_DOWN.has(String(value));
  },
  recording_gain: ({ value }, given) => {
    const at = (bits: number) => recorded(s(given, "water"), n(given, "depth_m"), bits);
    const [plain, finer] = [at(8), at(s(given, "form") === "raw" ? 12 : 10)];
    const cleaner = finer.red_light_signal_to_noise.likely > 1.5 * plain.red_light_signal_to_noise.likely;
    if (value === "steps" || value === "stretch")
      return finer.red_codes_per_stop_10_bit > 2 * finer.red_codes_per_stop_8_bit;
    if (value === "red") return finer.red_electrons > 1.01 * plain.red_electrons;
    if (value === "noise") return cleaner;
    return s(given, "form") === "raw" && LATER.has(String(value)) && !NO_FILE_HOLDS.has(String(value));
  },
  // Read off the three hills: where their halves lie, and what is stuck at the end.
  histogram_reading: ({ value }, given) => {
    const list = (name: string): number[] => (given[name] as readonly number[]).map(Number);
    const [medians, full] = [list("medians"), list("full_percent")];
    const [low, high] = [Math.min(...medians), Math.max(...medians)];
    if (Math.max(...full) > 20) return value === "over";
    if (high - low > 50) return value === "cast";
    return value === (high < 80 ? "under" : "good");
  },
};

const metresIn = (text: string): number[] => [...text.matchAll(/([\d.]+) m\b/g)].map(([, m]) => Number(m));
const degreesIn = (text: string): number => Number(/([\d.]+)°/.exec(text)?.[1]);
const typeIn = (text: string): string => /type (\w+)\)/.exec(text)?.[1] ?? "";
const ev = remembered((scene: Scene): number => exposureLoss(scene).depths[0].exposure_value_ev100.likely);
const SIDES: readonly [RegExp, NonNullable<Scene["sun_side"]>][] = [
  [/behind you/, "behind_camera"],
  [/beside you/, "beside"],
  [/in the frame/, "in_frame"],
];
const FLOORS: readonly [RegExp, NonNullable<Scene["bottom"]>][] = [
  [/sand/, "sand"],
  [/coral/, "coral"],
  [/seagrass/, "seagrass"],
];
const pick = <T>(list: readonly [RegExp, T][], text: string): T | undefined =>
  list.find(([words]) => words.test(text))?.[1];
/** From the water to the sensor; common practice, written down here by hand. */
const WAY_IN = [/swing-in/i, /port of the/i, /screwed/i, /step ring/i, /glass/i, /sheet/i, /the sensor/i];

/** A number that rises along the right order, from what an entry says. */
export const DIVE_RANK: Record<string, (text: string, given: Given) => number> = {
  mount_order: (text) => WAY_IN.findIndex((part) => part.test(text)),
  contrast_order: (text) => {
    const scene = { ...sceneOf(typeIn(text), SUN_DEG, 8), subject_distance_m: metresIn(text)[0] ?? 0 };
    return -exposureLoss(scene).depths[0].contrast_left_percent.likely;
  },
  sun_or_depth: (text, given) => {
    const sun_side = pick(SIDES, text);
    if (sun_side === undefined) throw new Error(`No side in ${text}`);
    return -ev({ ...sceneOf(s(given, "water"), SUN_DEG, metresIn(text)[0] ?? 0), sun_side });
  },
  brightest_hour: (text, given) => {
    const cloud_oktas = /overcast/i.test(text) ? 8 : 0;
    const first = String((given["entries"] as readonly string[])[0]).split(" ");
    return -ev({ ...sceneOf("II", degreesIn(text), metresIn(text)[0] ?? Number(first[2])), cloud_oktas });
  },
  floor_light: (text, given) => {
    const bottom = pick(FLOORS, text.toLowerCase());
    if (bottom === undefined) throw new Error(`No floor in ${text}`);
    return -ev({
      ...sceneOf(s(given, "water"), SUN_DEG, 5),
      bottom,
      bottom_depth_m: 5 + (metresIn(text)[0] ?? 0),
    });
  },
};
