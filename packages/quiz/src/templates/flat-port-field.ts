import { flatPortField_deg, WATER_INDEX } from "@sunfathom/optics";
import type { Draft } from "../item/draft.js";
import { numberOptions } from "../item/options.js";
import type { Maker, Template } from "../item/template.js";

const RADIAN = Math.PI / 180;
/** Crown glass, rounded: what a port is often made of. */
const GLASS_INDEX = 1.5;

/** What a flat port leaves of the field of view. */
export const flatPortField: Template = {
  id: "flat_port_field",
  topic: "mounting",
  interaction: "single_choice",
  levels: ["working", "expert"],
  make: (maker) => (maker.level === "expert" ? inAir(maker) : inWater(maker)),
};

function inWater({ draw, aim, say, show }: Maker): Draft | undefined {
  // Below 100 degrees, dividing the angle itself comes too near to the right answer to be told apart.
  const field_deg = 100 + 2 * draw.below(16);
  const key = flatPortField_deg(field_deg);
  const half = (field_deg / 2) * RADIAN;
  const options = numberOptions(
    { draw, aim },
    {
      key,
      wrong: [
        ["field_divided_by_index", field_deg / WATER_INDEX],
        ["field_kept", field_deg],
        ["field_widened", field_deg * WATER_INDEX],
        ["tangent_taken_for_sine", (2 * Math.atan(Math.tan(half) / WATER_INDEX)) / RADIAN],
        ["half_field_given", key / 2],
        ["glass_index_taken", (2 * Math.asin(Math.sin(half) / GLASS_INDEX)) / RADIAN],
        ["index_counted_twice", (2 * Math.asin(Math.sin(half) / WATER_INDEX ** 2)) / RADIAN],
      ],
      text: show.deg,
    },
  );
  if (!options) return undefined;
  const text = say.mounting.flat_port_field;
  const sine = Math.sin(half);
  const divided = show.number(sine / WATER_INDEX, 3);
  return {
    given: { field_deg },
    stem: text.stem({ field: show.deg(field_deg) }),
    answer: { interaction: "single_choice", options },
    steps: [
      {
        operation: "power",
        text: text.half({
          half: show.deg(field_deg / 2),
          sine: show.number(sine, 3),
          divided,
        }),
      },
      {
        operation: "multiply",
        text: text.last({ divided, half: show.deg(key / 2, 1), field: show.deg(key) }),
      },
    ],
    sources: ["snell"],
    basis: "definition",
  };
}

/** The way back: which lens in air gives the view that is wanted in water. */
function inAir({ draw, aim, say, show }: Maker): Draft | undefined {
  const water_deg = 54 + 2 * draw.below(17);
  const sine = Math.sin((water_deg / 2) * RADIAN);
  const air = (index: number): number => (2 * Math.asin(sine * index)) / RADIAN;
  const key = air(WATER_INDEX);
  const options = numberOptions(
    { draw, aim },
    {
      key,
      wrong: [
        ["field_divided_by_index", water_deg * WATER_INDEX],
        ["field_kept", water_deg],
        ["field_widened", water_deg / WATER_INDEX],
        [
          "tangent_taken_for_sine",
          (2 * Math.atan(Math.tan((water_deg / 2) * RADIAN) * WATER_INDEX)) / RADIAN,
        ],
        ["half_field_given", key / 2],
        ["glass_index_taken", air(GLASS_INDEX)],
        ["index_counted_twice", air(WATER_INDEX ** 2)],
        ["index_counted_twice", water_deg * WATER_INDEX ** 2],
      ],
      text: show.deg,
    },
  );
  if (!options) return undefined;
  const text = say.mounting.flat_port_field;
  const product = show.number(sine * WATER_INDEX, 3);
  return {
    given: { water_deg },
    stem: text.airStem({ field: show.deg(water_deg) }),
    answer: { interaction: "single_choice", options },
    steps: [
      {
        operation: "power",
        text: text.airHalf({ half: show.deg(water_deg / 2), sine: show.number(sine, 3), product }),
      },
      {
        operation: "multiply",
        text: text.last({ divided: product, half: show.deg(key / 2, 1), field: show.deg(key) }),
      },
    ],
    sources: ["snell"],
    basis: "definition",
  };
}
