import { numberOptions } from "../item/options.js";
import type { Template } from "../item/template.js";
import { longestRedLeft } from "../light/daylight-left.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";

/** What the table of the question tells. */
const ROWS_M = [4, 8, 12, 16] as const;
/** Between two rows the mean of both may be off by this, in stops: far less than the options differ. */
const HALF_WAY_STOPS = 0.1;

/** How much of the red channel's light is left, from a table of losses. */
export const redLeft: Template = {
  id: "red_left",
  topic: "light",
  interaction: "single_choice",
  levels: ["working", "expert"],
  make({ draw, aim, level, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const row = draw.below(ROWS_M.length - 1);
    const [row_m = 4, below_m = 8] = ROWS_M.slice(row);
    const between = level === "expert";
    const depth_m = between ? (row_m + below_m) / 2 : below_m;
    const at = (m: number) => lightAt(byDay(water, sun_deg, m)).depths[0];
    const [light, first, above, under] = [at(depth_m), at(1), at(row_m), at(below_m)];
    if (!light || !first || !above || !under) return undefined;
    const { red_left_percent: left, red_loss_stops: loss } = light;
    const mean = (above.red_loss_stops.likely + under.red_loss_stops.likely) / 2;
    if (between && Math.abs(mean - loss.likely) > HALF_WAY_STOPS) return undefined;
    const options = numberOptions(
      { draw, aim },
      {
        key: left.likely,
        interval: left,
        wrong: [
          ["channel_confused", light.green_left_percent.likely],
          ["channel_confused", light.blue_left_percent.likely],
          ["depth_misread", above.red_left_percent.likely],
          ["depth_misread", at(16)?.red_left_percent.likely ?? Number.NaN],
          ["loss_per_metre_subtracted", 100 - depth_m * (100 - first.red_left_percent.likely)],
          ["all_colours_fade_alike", light.photopic_left_percent.likely],
          ["first_metre_everywhere", 100 * (first.red_left_percent.likely / 100) ** depth_m],
          ["stops_as_divisor", 100 / loss.likely],
          ["logarithm_to_ten", 100 * 10 ** -loss.likely],
          ["longest_red_for_all", 100 * longestRedLeft(water, sun_deg, depth_m)],
          ["way_counted_twice", left.likely ** 2 / 100],
        ],
        text: show.percent,
      },
    );
    if (!options) return undefined;
    const text = say.light.red_left;
    const scene = say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) });
    const stops = show.stops(loss.likely);
    const rows = ROWS_M.map((m) => {
      const told = at(m);
      const [red, green, blue] = [told?.red_loss_stops, told?.green_loss_stops, told?.blue_loss_stops].map(
        (estimate) => show.fixed(estimate?.likely ?? Number.NaN, 1),
      ) as [string, string, string];
      return text.row({ depth: show.m(m), red, green, blue });
    });
    return {
      given: { water, sun_deg, depth_m },
      stem: text.stem({ scene, rows, depth: show.m(depth_m) }),
      answer: { interaction: "single_choice", options, interval: left },
      steps: [
        {
          operation: "compare",
          text: between
            ? text.between({ depth: show.m(depth_m), stops })
            : text.read({ depth: show.m(depth_m), stops }),
        },
        { operation: "power", text: text.last({ stops, percent: show.percent(left.likely) }) },
      ],
      sources: ["jerlov_1976", "kirk_1984", "bird_riordan_1986", "mean_sensor"],
      basis: "computed",
    };
  },
};
