/**
 * The right answers once more, by another way than the templates take: the water as measured samples of the published table
 * instead of its name, transmittances instead of densities, the texts that learners read instead of the numbers behind them,
 * and hand-written lists where the answer is common practice.
 */
import {
  filterTransmittance,
  integrate,
  integrateProduct,
  meanSensor,
  whiteLampPerLumen,
} from "@sunfathom/optics";
import {
  attenuation,
  colourRecovery,
  filterChoice,
  filterMounting,
  mixedLight,
  type Scene,
  whiteBalance,
} from "@sunfathom/planner";
import { atNight, daylightScene, withKd } from "../../../../test/support/scenes.js";
import { numberIn, readTable } from "../../../../test/support/tables.js";
import type { Choice, Given } from "../item/item.js";
import { remembered } from "../light/remember.js";
import { twoLamps } from "../light/scenes.js";

const table = readTable("jerlov_1976_kd");
const samplesOf = (type: string) =>
  table
    .filter((row) => row["water_type"] === type)
    .map((row) => ({ wavelength_nm: numberIn(row, "wavelength_nm"), kd_per_m: numberIn(row, "Kd_per_m") }));

function there<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("Nothing is there.");
  return value;
}

const n = (given: Given, name: string): number => {
  const value = given[name];
  if (typeof value !== "number") throw new Error(`${name} is no number.`);
  return value;
};
const s = (given: Given, name: string): string => String(given[name]);
const list = (given: Given, name: string): number[] => (given[name] as readonly number[]).map(Number);
const numbersIn = (text: string): number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

const sceneOf = (type: string, sun_deg: number, depth_m: number): Scene =>
  withKd(daylightScene("", sun_deg, depth_m), samplesOf(type));
const scene = (given: Given): Scene => sceneOf(s(given, "water"), n(given, "sun_deg"), n(given, "depth_m"));
const lit = (given: Given): Scene => ({ ...scene(given), lamps: [twoLamps(n(given, "distance_m"))] });

const lightOf = remembered((asked: Scene) => attenuation(asked));
const filterOf = remembered((asked: Scene) => filterChoice(asked));
const mixOf = remembered((asked: Scene) => mixedLight(asked));
const recordOf = remembered((asked: Scene) => colourRecovery(asked));
const balanceOf = remembered((asked: Scene) => whiteBalance(asked));

/** Same to the digits that survive another order of sums. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

type RightChoice = (option: Choice, given: Given) => boolean;

const bandsLeft = (given: Given): Map<string, number> => {
  const { wavelengths_nm, depths } = lightOf(scene(given));
  return new Map(
    (given["colours"] as string[]).map((nm) => [
      nm,
      there(there(depths[0]).spectrum_left[wavelengths_nm.indexOf(Number(nm))]),
    ]),
  );
};

/** Red light that the sensor receives where it is too dark for these settings, so that the model leaves them as they are. */
const redWith = remembered((change: Partial<Scene>) => {
  const asked: Scene = { ...sceneOf("3C", 50, 18), iso: 200, f_number: 5.6, ...change };
  const recordings = there(colourRecovery(asked).depths[0]).recordings;
  const wanted = change.filter_kind ? "filter_same_settings" : "no_filter";
  const found = there(recordings.find((r) => r.recording === wanted));
  return found.red_electrons * found.red_above_600_nm_share;
});
const bringsRed: Record<string, (given: Given) => boolean> = {
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
const changesWhite: Record<string, (words: string[]) => boolean> = {
  descend: ([water, from, to]) => shifted(there(water), Number(from), Number(to)),
  ascend: ([water, from, to]) => shifted(there(water), Number(from), Number(to)),
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

/** Common practice of the trade, no published source; written down here by hand. */
const SAFE = new Set([
  "on_in_water",
  "off_before_air",
  "away_from_eyes",
  "stay_on_rig",
  "rig_tried_out",
  "filter_dry",
  "rinse",
  "practise_flip",
  "beams_away",
  "hands_dry",
  "dim_near_animals",
]);
const PLACE: Record<string, string> = {
  fisheye: "behind_lens",
  wide: "behind_lens",
  flat: "before_port",
  action: "before_port",
  dome: "on_lens",
};

/** What a white card shows of lamp light that came this far: red against green, in stops. */
const lampRedOverGreen = remembered((water: string, distance_m: number): number => {
  const asked = { ...atNight(sceneOf(water, 50, 15)), lamps: [twoLamps(distance_m)] };
  const at = there(mixOf(asked).depths[0]);
  return there(at.lamp_red_water_loss_stops).likely - there(at.lamp_green_water_loss_stops).likely;
});
/** What the light on a card depends on, case by case. */
const balanceHangsOn: Record<string, (given: Given) => string> = {
  night: () => "once",
  moving: (given) => {
    const water = s(given, "water");
    const more = lampRedOverGreen(water, n(given, "far_m")) - lampRedOverGreen(water, n(given, "near_m"));
    return more > 0.2 ? "distance" : "once";
  },
  day: (given) => (shifted(s(given, "water"), n(given, "from_m"), n(given, "to_m")) ? "depth" : "once"),
};

/** ISO settings that cameras have, rising by thirds of a stop; written down here by hand. */
const ISO = [
  100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
  8000, 10000, 12800,
];
/** Of two that are as near, the lower one. */
const nearestIso = (wanted: number): number =>
  ISO.reduce((best, iso) => {
    const nearer = Math.abs(Math.log(best / wanted)) - Math.abs(Math.log(iso / wanted));
    return nearer > 1e-3 ? iso : best;
  });

/** How a control changes the picture, in stops, read from the option's text. */
function brighterBy(text: string): number {
  const numbers = numbersIn(text.replaceAll("1/", ""));
  const [from = 1, to = 1] = numbers;
  if (text.includes("aperture")) return 2 * Math.log2(from / to);
  if (text.includes("ISO")) return Math.log2(to / from);
  if (text.includes("time")) return Math.log2(from / to);
  return Math.log2(10 ** -from);
}

export const RIGHT_CHOICE: Record<string, RightChoice> = {
  red_left: ({ value }, given) =>
    same(Number(value), there(lightOf(scene(given)).depths[0]).red_left_percent.likely),
  red_reach: ({ value }, given) =>
    same(
      Number(value),
      lightOf(sceneOf(s(given, "water"), n(given, "sun_deg"), 10)).red_to_tenth_depth_m.likely,
    ),
  spectrum_most_left: ({ value }, given) => {
    const left = bandsLeft(given);
    return left.get(String(value)) === Math.max(...left.values());
  },
  filter_for_water: ({ value }, given) => filterOf(scene(given)).filter_kind === value,
  densities_stack: ({ value }, given) => {
    if ("shares_percent" in given) {
      const left = list(given, "shares_percent").reduce((product, percent) => (product * percent) / 100, 1);
      return same(10 ** -Number(value), left);
    }
    const left = list(given, "densities").reduce((product, density) => product * 10 ** -density, 1);
    return same(Number(value), given["asked"] === "percent" ? 100 * left : -Math.log10(left));
  },
  // Engraved f-numbers are rounded: within a fifth of a stop.
  pay_with_aperture: ({ value }, given) =>
    Math.abs(2 * Math.log2(n(given, "f_number") / Number(value)) - n(given, "stops")) < 0.2,
  exposure_way: ({ text }, given) => {
    const over = n(given, "over_stops");
    return Math.abs(over + brighterBy(text)) < Math.abs(over);
  },
  more_red_light: ({ value }, given) => there(bringsRed[String(value)])(given),
  when_to_balance: ({ value }) => {
    const [what = "", ...words] = String(value).split(" ");
    return there(changesWhite[what])(words);
  },
  lamp_only_balance: ({ value }, given) => value === there(balanceHangsOn[s(given, "case")])(given),
  kelvin_meaning: ({ value }, given) => {
    if (s(given, "kind") === "lamp") return value === n(given, "kelvin");
    const { cct_K } = there(lightOf(scene(given)).depths[0]);
    return cct_K === undefined ? value === "none" : Math.abs(Number(value) - cct_K) <= 51;
  },
  mixed_verdict: ({ value }, given) => there(mixOf(lit(given)).depths[0]).verdict === value,
  way_out: ({ value, text }, given) => {
    const way = there(mixOf(lit(given)).depths[0]).ways_out.find((w) => w.way === "lamp_filter");
    return value === "lamp_filter" && text.includes(there(there(way).lamp_filter_kind));
  },
  red_in_post: ({ value }, given) => {
    const density = n(given, "filter_density");
    const asked = scene(given);
    const filter = { filter_kind: "red", filter_density: density } as const;
    const { recordings } = there(recordOf(density > 0 ? { ...asked, ...filter } : asked).depths[0]);
    const wanted = density > 0 ? "filter_best_exposure" : "no_filter";
    const { red_quality } = there(recordings.find(({ recording }) => recording === wanted));
    const right = { gone: "none", poor: "part", acceptable: "restore", excellent: "restore" }[red_quality];
    return value === right;
  },
  ring_direction: ({ text }, given) => {
    const threads = numbersIn(text);
    if (n(given, "rings") === 2) {
      const [a, b, c, d] = threads;
      return a === n(given, "lens_mm") && b === c && d === n(given, "filter_mm");
    }
    const [from_mm = 0, to_mm = 0] = threads;
    const answer = filterMounting({
      port_kind: "dome",
      dome_radius_mm: 120,
      lens_kind: "standard",
      focal_length_mm: 50,
      sensor_diagonal_mm: 43.3,
      f_number: 8,
      lens_interchangeable: false,
      lens_thread_mm: n(given, "lens_mm"),
      filter_thread_mm: n(given, "filter_mm"),
      holder: "screw_on_lens",
      filter_thickness_mm: 3,
      filter_material: "glass",
      wet_lens: "none",
      zoom_travel_mm: 0,
      rings: [{ id: "owned", from_mm, to_mm, thickness_mm: 3 }],
      rear_fixing: "slot",
      sheet_thickness_mm: 0.1,
      sheet_refractive_index: 1.5,
      filter_change_underwater: "none",
    });
    return there(answer.ring_chain).closes;
  },
  flat_port_field: ({ value }, given) => {
    const half = (deg: number) => Math.sin((deg * Math.PI) / 360);
    return same(half(Number(value)) * 1.34, half(n(given, "field_deg")));
  },
  mount_place: ({ value }, given) => value === PLACE[s(given, "camera")],
  safe_lamps: ({ value }) => SAFE.has(String(value)),
};

export const RIGHT_NUMBER: Record<string, (given: Given) => number> = {
  percent_to_stops: (given) => -Math.log2(n(given, "left_percent") / 100),
  density_to_stops: (given) => -Math.log2(list(given, "densities").reduce((left, d) => left * 10 ** -d, 1)),
  density_to_even_out: (given) => Math.log10(2 ** -n(given, "green_stops") / 2 ** -n(given, "red_stops")),
  pay_with_iso: (given) =>
    nearestIso(
      n(given, "iso") / ("density" in given ? 10 ** -n(given, "density") : 0.5 ** n(given, "stops")),
    ),
  mired_shift: (given) =>
    "shift" in given
      ? 1 / (1 / n(given, "from_K") + n(given, "shift") * 1e-6)
      : 1e6 / n(given, "to_K") - 1e6 / n(given, "from_K"),
  lamp_falloff: (given) => {
    const light = (m: number) => 2 ** (-n(given, "per_metre_stops") * m) / m ** 2;
    return Math.log2(light(n(given, "near_m")) / light(n(given, "far_m")));
  },
  lamp_path: (given) => {
    const left = (m: number) => 0.5 ** (n(given, "per_metre_stops") * m);
    return -Math.log2(left(n(given, "lamp_m")) * left(n(given, "camera_m")));
  },
  // The thin-lens formula: the distance whose image lies behind the focus by as much as the sheet moves it.
  sheet_shift: (given) => {
    const [f, t] = [n(given, "focal_mm"), n(given, "thickness_mm")];
    const image_mm = f + t - t / n(given, "index");
    return 1e-3 / (1 / f - 1 / image_mm) - 1e-3 * f;
  },
};

/** Common practice, written down here by hand. */
const DIVE = [
  /mount/i,
  /close/i,
  /surface/i,
  /filming depth/i,
  /deeper/i,
  /after the dive/i,
  /take the filter out/i,
];

/** A number that rises along the right order, from what an entry says. */
export const RANK: Record<string, (text: string, given: Given) => number> = {
  colour_order: (text, given) => {
    const [nm] = numbersIn(text);
    return -there(samplesOf(s(given, "water")).find((sample) => sample.wavelength_nm === nm)).kd_per_m;
  },
  kelvin_order: (text) => {
    const { red, blue } = meanSensor();
    const light = whiteLampPerLumen(there(numbersIn(text)[0]));
    return integrateProduct(light, blue) / integrateProduct(light, red);
  },
  ring_chain: (text) => there(numbersIn(text)[0]),
  order_of_dive: (text) => DIVE.findIndex((step) => step.test(text)),
};

/** Whether two entries are partners, from what they say. */
export const PARTNERS: Record<string, (left: string, right: string) => boolean> = {
  density_match: (left, right) => {
    const transmittance = 10 ** -there(numbersIn(left)[0]);
    const [value = 0] = numbersIn(right);
    const [, of = 0] = numbersIn(right);
    const says = right.includes("/") ? 1 / of : right.includes("stop") ? 0.5 ** value : 1 / value;
    return Math.abs(Math.log2(says / transmittance)) < 0.1;
  },
};
