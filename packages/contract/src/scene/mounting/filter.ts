import { z } from "zod/v3";
import { choice, list, text } from "../../field/choice.js";
import { quantity } from "../../field/quantity.js";
import { FilterChange } from "../lens-filter.js";
import { filterHolders, filterMaterials, rearFixings } from "../values.js";
import { mountingDefaults } from "./defaults.js";
import { thread } from "./lens.js";

export const FilterHolder = z
  .enum(filterHolders)
  .describe(
    "How a filter is held: by the thread of the lens (`screw_on_lens`) or of the port (`screw_on_port`), by a hinge on the port (`flip`), by a clip (`clip_on`), as a sheet behind the lens (`rear_sheet`), or in a frame over an action camera's window (`action_camera`).",
  );

export const RearFixing = z
  .enum(rearFixings)
  .describe(
    "How a sheet stays behind the lens: it slides into a `slot`, or is held by `tape` around the opening.",
  );

const FilterMaterial = z
  .enum(filterMaterials)
  .describe("What the clear part of a filter is made of: `glass`, or `resin` (acrylic and the like).");

export const StepRing = z
  .object({
    id: text({
      description: "Your own name for it; answers use it.",
      example: "52-67",
      maxLength: 64,
    }),
    from_mm: quantity({
      ...thread,
      description: "Thread that screws into the lens, the port or the ring before.",
      example: 52,
    }),
    to_mm: quantity({
      ...thread,
      description: "Thread that it offers to the next ring or to the filter.",
      example: 67,
    }),
    thickness_mm: quantity({
      description: "By how much it moves forward what is screwed into it.",
      unit: "mm",
      min: 0.5,
      max: 50,
      example: 3,
    }),
  })
  .strict()
  .describe("A ring that leads from one thread to another.");

export const ringsField = {
  rings: list(StepRing, {
    description: "Rings that you own, in any order. None by default.",
    maxItems: 32,
    example: [
      { id: "52-60", from_mm: 52, to_mm: 60, thickness_mm: 2.5 },
      { id: "60-67", from_mm: 60, to_mm: 67, thickness_mm: 2.5 },
    ],
  }),
};

const opening = { unit: "mm", min: 5, max: 80 } as const;

/** The filter, what holds it, and a sheet in place of it. */
export const mountedFilterFields = {
  holder: choice(FilterHolder, {
    description:
      "The holder that you want. Without it, or where it does not fit, the answer advises the best one.",
    example: "flip",
  }),
  holder_inner_diameter_mm: quantity({
    description:
      "Inner diameter of the clip, hinge or frame that goes over the port. By default the answer assumes one that fits.",
    unit: "mm",
    min: 20,
    max: 400,
    example: 85,
  }),
  filter_thread_mm: quantity({
    ...thread,
    description: "Thread of the filter; that of the lens or port is assumed when left out.",
    example: 67,
  }),
  filter_clear_diameter_mm: quantity({
    description:
      "Width of the filter's clear part: for a filter without a thread, or where it is known. A little less than the thread when left out.",
    unit: "mm",
    min: 5,
    max: 300,
    example: 63,
  }),
  filter_thickness_mm: quantity({
    description: "How far the filter's front rim stands out in front of what it is screwed into.",
    unit: "mm",
    min: 0.5,
    max: 30,
    example: 5,
    default: mountingDefaults.filter_thickness_mm,
  }),
  filter_material: choice(FilterMaterial, {
    description: "What the filter is made of, which decides what it weighs.",
    example: "resin",
    default: mountingDefaults.filter_material,
  }),
  filter_change_underwater: choice(FilterChange, {
    description: "How you want to change the filter under water, if at all.",
    example: "flip",
    default: mountingDefaults.filter_change_underwater,
  }),
  rear_opening_width_mm: quantity({
    ...opening,
    description:
      "Width of the opening behind the lens that a sheet has to cover, or of the slot that it slides into. With `rear_opening_height_mm`.",
    example: 30,
  }),
  rear_opening_height_mm: quantity({
    ...opening,
    description: "Its height. With `rear_opening_width_mm`.",
    example: 24,
  }),
  rear_fixing: choice(RearFixing, {
    description: "How a sheet stays behind the lens.",
    example: "slot",
    default: mountingDefaults.rear_fixing,
  }),
  sheet_thickness_mm: quantity({
    description: "Thickness of a sheet behind the lens.",
    unit: "mm",
    min: 0.01,
    max: 3,
    example: 0.1,
    default: mountingDefaults.sheet_thickness_mm,
  }),
  sheet_refractive_index: quantity({
    description: "Refractive index of the sheet: about 1.5 for gelatine and polyester.",
    unit: "1",
    min: 1.3,
    max: 1.8,
    example: 1.5,
    default: mountingDefaults.sheet_refractive_index,
  }),
};
