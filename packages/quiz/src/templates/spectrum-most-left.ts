import type { MisconceptionId } from "@sunfathom/words";
import type { Template } from "../item/template.js";
import { kdSpreadAt } from "../light/daylight-left.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";
import { spectrumPicture } from "../picture/spectrum.js";

/** Of these, four are asked about. */
const COLOURS = ["425", "475", "525", "575", "600", "650"] as const;
const ASKED = 4;
type Colour = (typeof COLOURS)[number];
const MISTAKE: Record<Colour, MisconceptionId> = {
  "425": "curve_misread",
  "475": "blue_lasts_everywhere",
  "525": "curve_misread",
  "575": "curve_misread",
  "600": "curve_misread",
  "650": "red_reaches_deepest",
};
/** The colour that is left most must lead by this ratio, at either end of what the water type leaves open. */
const CLEARLY = 1.15;
/** With less of it left there is no picture to be made. */
const LEAST_LEFT = 0.02;

/** Reading a picture of what is left of daylight. */
export const spectrumMostLeft: Template = {
  id: "spectrum_most_left",
  topic: "light",
  interaction: "single_choice",
  levels: ["beginner"],
  make({ draw, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const depth_m = draw.pick([5, 6, 8, 10, 12, 15]);
    const colours = draw.sample(COLOURS, ASKED);
    const kd = new Map(colours.map((c) => [c, kdSpreadAt(water, sun_deg, Number(c))]));
    const [most, second] = [...colours].sort((a, b) => (kd.get(a)?.[1] ?? 0) - (kd.get(b)?.[1] ?? 0));
    const clear = kd
      .get(most ?? "475")
      ?.every((k, i) => Math.exp(((kd.get(second ?? "475")?.[i] ?? 0) - k) * depth_m) > CLEARLY);
    if (!most || !clear) return undefined;
    if (Math.exp(-(kd.get(most)?.[1] ?? 0) * depth_m) < LEAST_LEFT) return undefined;
    const { wavelengths_nm, depths } = lightAt(byDay(water, sun_deg, depth_m));
    const left = depths[0]?.spectrum_left ?? [];
    const text = say.light.spectrum_most_left;
    return {
      given: { water, sun_deg, depth_m, colours },
      stem: text.stem({ depth: show.m(depth_m) }),
      picture: () => spectrumPicture(wavelengths_nm, left, show.m(depth_m), say),
      answer: {
        interaction: "single_choice",
        options: colours.map((c) => ({
          value: c,
          text: text.option({ band: say.light.band[c] }),
          right: c === most,
          ...(c === most ? {} : { misconception: MISTAKE[c] }),
        })),
      },
      steps: [
        {
          operation: "compare",
          text: text.reading({
            shares: colours.map((c) => ({
              colour: say.light.colour[c],
              percent: show.percent(100 * Math.exp(-(kd.get(c)?.[1] ?? 0) * depth_m)),
            })),
          }),
        },
        { operation: "recall", text: text.last({ colour: say.light.colour[most] }) },
      ],
      sources: ["jerlov_1976", "kirk_1984"],
      basis: "computed",
    };
  },
};
