/** The right answers to the questions on camera, grade, haze and care once more, by another way: see another-route.test-support.ts. */

import { daylightScene, withKd } from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { attenuation, colourRecovery, mixedLight, type Scene } from "@sunfathom/planner";
import type { Choice, Given } from "../item/item.js";
import { remembered } from "../light/remember.js";
import { twoLamps } from "../light/scenes.js";

const table = readTable("jerlov_1976_kd");
const sceneOf = (type: string, depth_m: number): Scene =>
  withKd(
    daylightScene("", 50, depth_m),
    table
      .filter((row) => row["water_type"] === type)
      .map((row) => ({ wavelength_nm: numberIn(row, "wavelength_nm"), kd_per_m: numberIn(row, "Kd_per_m") })),
  );
const n = (given: Given, name: string): number => Number(given[name]);
const list = (given: Given, name: string): number[] => (given[name] as readonly number[]).map(Number);

/** Dial of a camera in thirds of a stop, written down here by hand. */
const ISO = [
  100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
];
/** Of two that are as near, the lower one. */
const nearestIso = (wanted: number): number =>
  ISO.reduce((best, iso) => {
    const nearer = Math.abs(Math.log(best / wanted)) - Math.abs(Math.log(iso / wanted));
    return nearer > 1e-3 ? iso : best;
  });

/** Seconds that the shutter is open. */
const open_s = (fps: number, angle_deg: number): number => angle_deg / 360 / fps;

/** The light that BT.709 stores as a code value, closed in upon from both sides. */
function lightOfCode(code: number): number {
  let [low, high] = [0.018, 1];
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (255 * (1.099 * middle ** 0.45 - 0.099) < code) low = middle;
    else high = middle;
  }
  return low;
}

export const FURTHER_NUMBER: Record<string, (given: Given) => number> = {
  shutter_angle: (given) => {
    const time = open_s(n(given, "fps"), n(given, "angle_deg"));
    return "to_fps" in given
      ? Math.log2(time / open_s(n(given, "to_fps"), n(given, "to_angle_deg")))
      : 1 / time;
  },
  // The inverse of BT.709, closed in upon: which signal has this light?
  histogram_code: (given) => {
    const light = n(given, "percent") / 100 / 2 ** n(given, "under_stops");
    let [low, high] = [0.081, 1];
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (((middle + 0.099) / 1.099) ** (1 / 0.45) < light) low = middle;
      else high = middle;
    }
    return 255 * low;
  },
  // Counted one by one.
  codes_per_stop: (given) => {
    const all = 2 ** n(given, "bits");
    if (given["curve"] === "log") return all / n(given, "stops");
    const [top, bottom] = [all / 2 ** (n(given, "stop") - 1), all / 2 ** n(given, "stop")];
    return Array.from({ length: all }, (_, i) => i + 1).filter((code) => code > bottom && code <= top).length;
  },
  card_reading: (given) => {
    if (given["curve"] !== "rec709") return Math.log2(n(given, "green")) - Math.log2(n(given, "red"));
    return Math.log2(lightOfCode(n(given, "green")) / lightOfCode(n(given, "red")));
  },
  sun_turn: (given) => nearestIso(n(given, "iso") / 0.5 ** n(given, "loss_stops")),
  loss_budget: (given) => {
    const left = list(given, "parts").reduce((light, stops) => light * 0.5 ** stops, 1);
    return given["asked"] === "factor" ? 1 / left : -Math.log2(left);
  },
  filter_two_dives: (given) => {
    const errors = list(given, "errors");
    const minutes = list(given, "minutes");
    // Minute by minute.
    const means = [0, 2, 4].map((i) => {
      const each = minutes.flatMap((count, dive) =>
        Array.from({ length: count }, () => errors[i + dive] ?? Number.NaN),
      );
      return each.reduce((sum, error) => sum + error, 0) / each.length;
    });
    return Math.min(...means);
  },
};

const lossesAt = remembered((type: string, depth_m: number) => {
  const { red_loss_stops, green_loss_stops } = attenuation(sceneOf(type, depth_m)).depths[0];
  return red_loss_stops.likely - green_loss_stops.likely;
});
const hazeOf = remembered((type: string, distance_m: number): number => {
  const asked = { ...sceneOf(type, 12), subject_distance_m: distance_m, lamps: [twoLamps(distance_m)] };
  return mixedLight(asked).depths[0].lit_haze_percent?.likely ?? Number.NaN;
});
const metresIn = (text: string): number[] => [...text.matchAll(/([\d.]+) m\b/g)].map(([, m]) => Number(m));
const typeIn = (text: string): string => /type (\w+)\)/.exec(text)?.[1] ?? "";

/** How white a thing is: read off the table of reflectances, largest over smallest of blue, green and red. */
const floors = readTable("bottom_reflectance");
const colourOf = (kind: string): number => {
  const at = (nm: number): number =>
    floors.filter((row) => numberIn(row, "wavelength_nm") === nm).map((row) => numberIn(row, kind))[0] ??
    Number.NaN;
  const bands = [at(460), at(540), at(600)];
  return Math.max(...bands) / Math.min(...bands);
};
const THINGS: readonly [RegExp, string][] = [
  [/sand/, "sand"],
  [/pink/, "crustose_coralline_algae"],
  [/^coral/i, "coral"],
  [/seaweed/, "macroalgae"],
  [/seagrass/, "seagrass"],
];

export const FURTHER_RANK: Record<string, (text: string, given: Given) => number> = {
  balance_lasts: (text, given) => {
    const [from = 0, to = 0] = metresIn(text);
    const water = String(given["water"]);
    return -(lossesAt(water, to) - lossesAt(water, from));
  },
  balance_target: (text) => {
    if (/white slate/.test(text)) return 1;
    return colourOf(THINGS.find(([words]) => words.test(text))?.[1] ?? "");
  },
  backscatter_order: (text) => hazeOf(typeIn(text), metresIn(text)[0] ?? 0),
};

/** Common practice of the trade, no published source; written down here by hand. */
const CURES: readonly [RegExp, RegExp][] = [
  [/colour changes/, /white balance/i],
  [/bright fish/, /^exposure$/i],
  [/noise/, /iso/i],
  [/stabilised/i, /longest/i],
  [/soft now and then/, /focus/i],
  [/rims/, /sharpening/i],
  [/dark spots/, /dust/i],
  [/round patches/, /bubbles/i],
  [/dark corners/i, /ring or filter/i],
  [/one side/i, /lie flat/i],
  [/no red/i, /not swung back/i],
  [/pale image/, /falls on the port/i],
];
const cures = (left: string, right: string): boolean =>
  CURES.some(([fault, cause]) => fault.test(left) && cause.test(right));

const lampFilterAt = remembered((type: string, depth_m: number) => {
  const { ways_out } = mixedLight({ ...sceneOf(type, depth_m), lamps: [twoLamps(1)] }).depths[0];
  return ways_out.find(({ way }) => way === "lamp_filter");
});

export const FURTHER_PARTNERS: Record<string, (left: string, right: string) => boolean> = {
  auto_settings: cures,
  mount_faults: cures,
  lamp_filter_water: (left, right) => {
    const way = lampFilterAt(typeIn(left), metresIn(left)[0] ?? 0);
    const [density] = right.match(/[\d.]+$/) ?? [];
    return (
      right.toLowerCase().startsWith(String(way?.lamp_filter_kind)) &&
      Number(density) === way?.lamp_filter_density
    );
  },
};

const GRADED = new Set(["cast", "dark", "contrast"]);
const CARED = new Set(["maker", "watched", "damaged", "flooded", "dry_seals", "cool", "flight", "rest"]);
const redQuality = remembered(
  (type: string, depth_m: number) =>
    colourRecovery(sceneOf(type, depth_m)).depths[0].recordings[0]?.red_quality,
);

export const FURTHER_CHOICE: Record<string, (option: Choice, given: Given) => boolean> = {
  grade_saves: ({ value }) => {
    const [what = "", water = "", depth = ""] = String(value).split(" ");
    return what === "red" ? redQuality(water, Number(depth)) !== "gone" : GRADED.has(what);
  },
  safe_batteries: ({ value }) => CARED.has(String(value)),
};
