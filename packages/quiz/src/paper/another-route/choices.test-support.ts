/** Whether an option is the right one. */

import { surfaceDaylight, throughSurface, WAVELENGTHS_NM } from "@sunfathom/optics";
import { filterMounting } from "@sunfathom/planner";
import type { Given } from "../../item/item.js";
import {
  filterOf,
  lightOf,
  list,
  lit,
  mixOf,
  n,
  numbersIn,
  type RightChoice,
  recordOf,
  s,
  same,
  scene,
  sceneOf,
  there,
} from "./asked.test-support.js";
import { bringsRed, bringsTwiceTheRed } from "./red.test-support.js";
import { balanceHangsOn, changesWhite } from "./white.test-support.js";

const bandsLeft = (given: Given): Map<string, number> => {
  const { wavelengths_nm, depths } = lightOf(scene(given));
  return new Map(
    (given["colours"] as string[]).map((nm) => [
      nm,
      there(there(depths[0]).spectrum_left[wavelengths_nm.indexOf(Number(nm))]),
    ]),
  );
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

/** How a control changes the picture, in stops, read from the option's text. */
function brighterBy(text: string): number {
  const numbers = numbersIn(text.replaceAll("1/", ""));
  const [from = 1, to = 1] = numbers;
  if (text.includes("aperture")) return 2 * Math.log2(from / to);
  if (text.includes("ISO")) return Math.log2(to / from);
  if (text.includes("time")) return Math.log2(from / to);
  return Math.log2(10 ** -from);
}

/** Stops that light from 600 to 700 nm has lost: the sun's spectrum below the surface, summed as the trapezoid rule has it. */
function redStops({ wavelengths_nm, depths }: ReturnType<typeof lightOf>, sun_deg: number): number {
  const { downwelling } = throughSurface(surfaceDaylight(sun_deg, 0), sun_deg, 4);
  let [before, after] = [0, 0];
  for (const [i, nm] of wavelengths_nm.entries()) {
    if (nm < 600 || nm > 700) continue;
    const light = there(downwelling[WAVELENGTHS_NM.indexOf(nm)]) * (nm === 600 || nm === 700 ? 0.5 : 1);
    before += light;
    after += light * there(depths[0].spectrum_left[i]);
  }
  return Math.log2(before / after);
}

export const RIGHT_CHOICE: Record<string, RightChoice> = {
  red_left: ({ value }, given) =>
    same(Number(value), there(lightOf(scene(given)).depths[0]).red_left_percent.likely),
  red_reach: ({ value }, given) => {
    const light = lightOf(
      sceneOf(s(given, "water"), n(given, "sun_deg"), "stops" in given ? Number(value) : 10),
    );
    if (!("stops" in given)) return same(Number(value), light.red_to_tenth_depth_m.likely);
    // The picture keeps light as slanting as it is just below the surface; the planner lets it straighten with depth.
    return Math.abs(redStops(light, n(given, "sun_deg")) - n(given, "stops")) < 0.06;
  },
  // By the table's own curve: where most is left, and how much.
  water_from_spectrum: ({ value }, given) => {
    const { wavelengths_nm, depths } = lightOf(
      sceneOf(String(value), n(given, "sun_deg"), n(given, "depth_m")),
    );
    const most = Math.max(...depths[0].spectrum_left);
    const nm = wavelengths_nm[depths[0].spectrum_left.indexOf(most)];
    return nm === n(given, "peak_nm") && Math.abs((100 * most) / n(given, "peak_percent") - 1) < 0.01;
  },
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
  pay_with_aperture: ({ value }, given) => {
    const area = (f_number: number): number => 1 / f_number ** 2;
    const brighter = area(Number(value)) / area(n(given, "f_number"));
    const wanted = "factor" in given ? n(given, "factor") : 2 ** n(given, "stops");
    return Math.abs(Math.log2(brighter / wanted)) < 0.2;
  },
  exposure_way: ({ text }, given) => {
    const over = n(given, "over_stops");
    const turned = text.split(/, and /).reduce((stops, part) => stops + brighterBy(part), 0);
    // What is engraved is rounded: two controls that cancel seem to be off by up to a seventh of a stop.
    return Math.abs(over + turned) < Math.abs(over) - 0.3;
  },
  more_red_light: ({ value }, given) => {
    const [what = "", ...amounts] = String(value).split(" ");
    if (amounts.length === 0) return there(bringsRed[what])(given);
    return there(bringsTwiceTheRed[what])(amounts.map(Number), given);
  },
  when_to_balance: ({ value }) => {
    const [what = "", ...words] = String(value).split(" ");
    return there(changesWhite[what])(words);
  },
  lamp_only_balance: ({ value }, given) => value === there(balanceHangsOn[s(given, "case")])(given),
  kelvin_meaning: ({ value }, given) => {
    const { cct_K } = there(lightOf(scene(given)).depths[0]);
    return cct_K === undefined ? value === "none" : Math.abs(Number(value) - cct_K) <= 51;
  },
  mixed_verdict: ({ value }, given) => there(mixOf(lit(given)).depths[0]).verdict === value,
  way_out: ({ value, text }, given) => {
    const way = there(mixOf(lit(given)).depths[0]).ways_out.find((w) => w.way === "lamp_filter");
    const kind = there(there(way).lamp_filter_kind);
    return value === `${kind}_on_lamp` && text.includes(`${kind} filter on each light`);
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
    if ("water_deg" in given) return same(half(n(given, "water_deg")) * 1.34, half(Number(value)));
    return same(half(Number(value)) * 1.34, half(n(given, "field_deg")));
  },
  mount_place: ({ value }, given) => value === PLACE[s(given, "camera")],
  safe_lamps: ({ value }) => SAFE.has(String(value)),
};
