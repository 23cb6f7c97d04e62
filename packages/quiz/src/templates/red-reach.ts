import type { MisconceptionId } from "@sunfathom/words";
import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";
import { depthOfShare, longestRedReach_m, shareLeft } from "../light/daylight-left.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";
import { depthPicture } from "../picture/depths.js";

const TENTH = 0.1;
const HALF = 0.5;
/** Asked in stops: a quarter and an eighth. */
const STOPS = [2, 3];

/** The picture reaches so far beyond the answer. */
const BEYOND = 1.6;

/** How deep red reaches, from curves over depth; asked in stops, the loss has to be turned into a share first. */
export const redReach: Template = {
  id: "red_reach",
  topic: "light",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  make({ draw, aim, level, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const stops = level === "working" ? draw.pick(STOPS) : undefined;
    const share = stops === undefined ? TENTH : HALF ** stops;
    const { red_to_tenth_depth_m: tenth, red_to_hundredth_depth_m: hundredth } = lightAt(
      byDay(water, sun_deg, 10),
    );
    const first = shareLeft(water, sun_deg, 1, "red");
    const depthOf = (left: number, band: "red" | "green" | "brightness" = "red"): number =>
      depthOfShare(water, sun_deg, left, band);
    const half_m = depthOf(HALF);
    const key = stops === undefined ? tenth.likely : depthOf(share);
    const otherReading: (readonly [MisconceptionId, number])[] =
      stops === undefined
        ? [
            ["tenth_taken_for_half", half_m],
            ["tenth_taken_for_hundredth", hundredth.likely],
          ]
        : [
            ["stops_taken_for_tenths", depthOf(TENTH ** stops)],
            ["stops_as_divisor", depthOf(1 / stops)],
            ["stop_miscounted", depthOf(HALF ** (stops + 1))],
            ["stop_miscounted", depthOf(HALF ** (stops - 1))],
          ];
    const options = numberOptions(
      { draw, aim },
      {
        key,
        ...(stops === undefined ? { interval: tenth } : {}),
        wrong: [
          ...otherReading,
          ["brightness_taken_for_red", depthOf(share, "brightness")],
          ["channel_confused", depthOf(share, "green")],
          ["share_by_proportion", (HALF / share) * half_m],
          ["loss_per_metre_subtracted", (1 - share) / (1 - first)],
          ["first_metre_everywhere", Math.log(share) / Math.log(first)],
          ["longest_red_for_all", longestRedReach_m(water, sun_deg, share)],
        ],
        text: show.m1,
      },
    );
    if (!options) return undefined;
    const text = say.light.red_reach;
    const scene = say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) });
    const percent = show.number(100 * share, 1);
    const last = { operation: "recall" as const, text: text.last({ depth: show.m1(key), percent }) };
    return {
      given: { water, sun_deg, ...(stops === undefined ? {} : { stops }) },
      stem: stops === undefined ? text.stem({ scene }) : text.stopsStem({ scene, stops: show.stops(stops) }),
      picture: () =>
        depthPicture(
          {
            deepest_m: BEYOND * key,
            curves: (["red", "green", "brightness"] as const).map((band) => ({
              name: say.light.depthPicture.curve[band === "brightness" ? "all" : band],
              left: (depth_m: number) => shareLeft(water, sun_deg, depth_m, band),
            })),
          },
          say,
        ),
      answer: {
        interaction: "single_choice",
        options,
        ...(stops === undefined ? { interval: tenth } : {}),
      },
      steps:
        stops === undefined
          ? [
              {
                operation: "compare",
                text: text.falls({ half: show.m1(half_m), hundredth: show.m1(hundredth.likely) }),
              },
              last,
            ]
          : [{ operation: "double", text: text.share({ stops: show.stops(stops), percent }) }, last],
      sources: ["jerlov_1976", "pope_fry_1997", "kirk_1984", "bird_riordan_1986"],
      basis: "computed",
    };
  },
};
