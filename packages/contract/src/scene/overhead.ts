import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { overheads } from "./values.js";

export const Overhead = z
  .enum(overheads)
  .describe(
    "What lies over the diver: `none`, an `overhang`, a `cavern` (daylight still reaches), a `cave` (none does), the inside of a `wreck`, or `ice`.",
  );

const training = "Only with the training, the guide and the backup lights for it.";

/** What lies over the diver and cuts the sky. */
export const overheadFields = {
  overhead: choice(Overhead, {
    description: `What lies over the diver and cuts daylight; \`none\` where it is left out. ${training}`,
    example: "overhang",
  }),
  daylight_open_share: quantity({
    description:
      "Share of open water's daylight at the same depth that comes in, as a card metered there and in the open tells. With `overhang` (0.5 where it is left out), `cavern` (0.1) and `wreck` (0.02).",
    unit: "1",
    min: 0.0001,
    max: 1,
    example: 0.3,
  }),
  ice_thickness_m: quantity({
    description: "Thickness of the ice. With `overhead` `ice`; 0.5 m where it is left out.",
    unit: "m",
    min: 0.05,
    max: 4,
    example: 0.6,
  }),
  snow_thickness_m: quantity({
    description: "Snow on the ice. With `overhead` `ice`; none where it is left out.",
    unit: "m",
    min: 0,
    max: 1,
    example: 0.1,
  }),
};
