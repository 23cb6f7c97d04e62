import type { Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS, type Water } from "../light/scenes.js";
import { spectrumPicture } from "../picture/spectrum.js";

/** One of each: so far apart that colour and height of the curve tell them. */
const GROUPS: readonly (readonly Water[])[] = [["IB", "II"], ["1C"], ["5C", "7C"]];
const DEPTHS_M = [4, 5, 6, 8, 10];
/** With less of it left there is no picture to be made. */
const LEAST_LEFT_PERCENT = 1;

interface Curve {
  water: Water;
  wavelengths_nm: readonly number[];
  left: readonly number[];
  /** Where most is left, and how much. */
  peak_nm: number;
  peak_percent: number;
}

function curveOf(water: Water, sun_deg: number, depth_m: number): Curve {
  const { wavelengths_nm, depths } = lightAt(byDay(water, sun_deg, depth_m));
  const left = depths[0].spectrum_left;
  const most = Math.max(...left);
  const peak_nm = wavelengths_nm[left.indexOf(most)] ?? 0;
  return { water, wavelengths_nm, left, peak_nm, peak_percent: 100 * most };
}

/** Telling the water by the light that is left in it. */
export const waterFromSpectrum: Template = {
  id: "water_from_spectrum",
  topic: "light",
  interaction: "single_choice",
  levels: ["working"],
  make({ draw, say, show }) {
    const sun_deg = draw.pick(SUNS_DEG);
    const depth_m = draw.pick(DEPTHS_M);
    const curves = GROUPS.map((group) => curveOf(draw.pick(group), sun_deg, depth_m));
    const right = draw.pick(curves);
    if (right.peak_percent < LEAST_LEFT_PERCENT) return undefined;
    const text = say.light.water_from_spectrum;
    const depth = show.m(depth_m);
    const named = (water: Water): string => say.common.water[water];
    const clearer = (water: Water): boolean => WATERS.indexOf(water) < WATERS.indexOf(right.water);
    const told = ({ water, peak_nm, peak_percent }: Curve) => ({
      water: named(water),
      nm: peak_nm,
      percent: show.percent(peak_percent),
    });
    return {
      // What the picture shows, from which the water has to be told.
      given: {
        sun_deg,
        depth_m,
        waters: curves.map(({ water }) => water),
        peak_nm: right.peak_nm,
        peak_percent: Number(right.peak_percent.toPrecision(4)),
      },
      stem: text.stem({ depth }),
      picture: () => spectrumPicture(right.wavelengths_nm, right.left, depth, say),
      answer: {
        interaction: "single_choice",
        options: curves.map(({ water }) => ({
          value: water,
          text: text.option({ water: named(water) }),
          right: water === right.water,
          ...(water === right.water
            ? {}
            : { misconception: clearer(water) ? "water_taken_for_clearer" : "water_taken_for_more_turbid" }),
        })),
      },
      steps: [
        { operation: "compare", text: text.peak(told(right)) },
        {
          operation: "judge",
          text: text.others({
            depth,
            each: curves.filter(({ water }) => water !== right.water).map(told),
          }),
        },
        { operation: "recall", text: text.last({ water: named(right.water) }) },
      ],
      sources: ["jerlov_1976", "kirk_1984"],
      basis: "computed",
    };
  },
};
