import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";
import { depthOfShare, longestRedReach_m, shareLeft } from "../light/daylight-left.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";
import { depthPicture } from "../picture/depths.js";

const TENTH = 0.1;

/** The picture reaches so far beyond the answer. */
const BEYOND = 1.6;

/** How deep red reaches, from curves over depth. */
export const redReach: Template = {
  id: "red_reach",
  topic: "light",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  make({ draw, aim, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const { red_to_tenth_depth_m: tenth, red_to_hundredth_depth_m: hundredth } = lightAt(
      byDay(water, sun_deg, 10),
    );
    const first = shareLeft(water, sun_deg, 1, "red");
    const half_m = depthOfShare(water, sun_deg, 0.5, "red");
    const options = numberOptions(
      { draw, aim },
      {
        key: tenth.likely,
        interval: tenth,
        wrong: [
          ["tenth_taken_for_half", half_m],
          ["tenth_taken_for_hundredth", hundredth.likely],
          ["brightness_taken_for_red", depthOfShare(water, sun_deg, TENTH, "brightness")],
          ["curve_misread", depthOfShare(water, sun_deg, TENTH, "green")],
          ["stops_as_divisor", 10 * half_m],
          ["loss_per_metre_subtracted", (1 - TENTH) / (1 - first)],
          ["first_metre_everywhere", Math.log(TENTH) / Math.log(first)],
          ["longest_red_for_all", longestRedReach_m(water, sun_deg, TENTH)],
        ],
        text: show.m1,
      },
    );
    if (!options) return undefined;
    const text = say.light.red_reach;
    const scene = say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) });
    return {
      given: { water, sun_deg },
      stem: text.stem({ scene }),
      picture: () =>
        depthPicture(
          {
            deepest_m: BEYOND * tenth.likely,
            curves: (["red", "green", "brightness"] as const).map((band) => ({
              name: say.light.depthPicture.curve[band === "brightness" ? "all" : band],
              left: (depth_m: number) => shareLeft(water, sun_deg, depth_m, band),
            })),
          },
          say,
        ),
      answer: { interaction: "single_choice", options, interval: tenth },
      steps: [
        {
          operation: "compare",
          text: text.falls({ half: show.m1(half_m), hundredth: show.m1(hundredth.likely) }),
        },
        {
          operation: "recall",
          text: text.last({ depth: show.m1(tenth.likely) }),
        },
      ],
      sources: ["jerlov_1976", "pope_fry_1997", "kirk_1984", "bird_riordan_1986"],
      basis: "computed",
    };
  },
};
