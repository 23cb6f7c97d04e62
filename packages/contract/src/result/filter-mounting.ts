import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { FilterChange } from "../scene/lens-filter.js";
import { FilterHolder } from "../scene/mounting/filter.js";
import { ResolvedMountingScene } from "../scene/mounting/scene.js";
import { answerTail, code, headOf, parameters, Statement } from "./common.js";
import { ClearanceEstimate, LengthEstimate, WeightEstimate } from "./estimates.js";
import { RearSheet, RingChain, Vignetting } from "./mounting-parts.js";
import { angle, share } from "./quantities.js";

export const MountPlace = z
  .enum(["on_lens", "before_port", "before_window", "behind_lens"])
  .describe(
    "Where a filter sits: `on_lens` inside the housing, `before_port` or `before_window` in the water, or `behind_lens`.",
  );

export const MountVerdict = z
  .enum(["fits", "fits_with_care", "does_not_fit"])
  .describe("Whether a holder goes with this camera and port.");

const exampleOption = {
  holder: "screw_on_lens",
  place: "on_lens",
  verdict: "fits",
  code: "mount_on_lens",
  text: "The filter screws onto the lens inside the housing: in air, safe from knocks, but fixed for the whole dive.",
  parameters: {},
} as const;

export const MountOption = z
  .object({
    holder: choice(FilterHolder, { description: "The holder.", example: exampleOption.holder }),
    place: choice(MountPlace, { description: "Where it puts the filter.", example: exampleOption.place }),
    verdict: choice(MountVerdict, { description: "Whether it fits.", example: exampleOption.verdict }),
    code: code(exampleOption.code),
    text: text({ description: "The deciding reason, in a sentence or two.", example: exampleOption.text }),
    parameters: parameters({ example: exampleOption.parameters }),
  })
  .describe("A holder, and whether it fits.");

function fromDome(where: string, example: number) {
  return quantity({
    description: `Dome of known radius: how far ${where} infinity appears, which the lens has to focus on.`,
    unit: "mm",
    decimals: 0,
    min: 0,
    max: 10000,
    example,
  });
}

export const PortFigures = z
  .object({
    field_in_air_deg: angle("Full angle that the lens sees over the diagonal, in air.", 107),
    field_in_water_deg: angle("The same in the water, through this port.", 73.7),
    magnification: quantity({
      description: "Flat port: how much larger things appear near the middle; absent with a dome.",
      unit: "1",
      decimals: 2,
      min: 1,
      max: 2,
      example: 1.34,
    }).optional(),
    apparent_distance_share: share(
      "Flat port: apparent distance of things over the true one; absent with a dome.",
      0.746,
    ).optional(),
    lateral_colour_percent: quantity({
      description:
        "Flat port: how much farther from the middle blue (450 nm) falls than red (650 nm) in the corner; absent with a dome, and within 6 degrees of grazing.",
      unit: "%",
      decimals: 2,
      min: 0,
      max: 1000,
      example: 1.74,
    }).optional(),
    virtual_infinity_from_vertex_mm: fromDome("in front of the glass", 324).optional(),
    virtual_infinity_from_centre_mm: fromDome(
      "from the dome's centre, where the entrance pupil belongs,",
      434,
    ).optional(),
  })
  .describe("What the port makes of the lens's picture.");

export const FilterMountingAnswer = z
  .object({
    ...headOf(ResolvedMountingScene),
    holder: choice(FilterHolder, {
      description: "The advised holder: the one that you asked for, unless it does not fit.",
      example: "screw_on_lens",
    }),
    place: choice(MountPlace, { description: "Where it puts the filter.", example: exampleOption.place }),
    verdict: choice(MountVerdict, {
      description:
        "Whether it fits; `does_not_fit` only where no holder does, and then the reasons say what to change.",
      example: "fits",
    }),
    filter_change_underwater: choice(FilterChange, {
      description: "Whether, and how, it lets the filter be changed under water.",
      example: "none",
    }),
    options: list(MountOption, {
      description: "Every holder, best first.",
      example: [exampleOption],
    }),
    port: PortFigures.describe("What the port makes of the lens's picture."),
    ring_chain: RingChain.describe(
      "Rings from the thread of lens or port to that of the filter; present where the filter screws into a thread.",
    ).optional(),
    vignetting: Vignetting.describe(
      "What filter and rings cost the corners; present for a filter in front of the lens whose clear diameter is known.",
    ).optional(),
    clear_diameter_needed_mm: LengthEstimate.describe(
      "Clear diameter, where the filter sits, that takes nothing from the corners; present for a filter in front of the lens.",
    ).optional(),
    dome_clearance_mm: ClearanceEstimate.describe(
      "Gap between the rim of filter or ring and the dome, with the entrance pupil in its centre; negative where they would overlap. Present on a lens behind a dome of known radius.",
    ).optional(),
    port_clearance_mm: quantity({
      description:
        "Room left between the rim of filter or ring and the port, with the zoom at its longest; negative where they would touch. Present on a lens with `lens_port_gap_mm`.",
      unit: "mm",
      decimals: 1,
      min: -10000,
      max: 300,
      example: 4.5,
    }).optional(),
    filter_weight_in_water_g: WeightEstimate.describe(
      "What the filter weighs in sea water, with an aluminium rim and without rings or holder; present for a filter in front of the lens whose size is known.",
    ).optional(),
    rear_sheet: RearSheet.describe(
      "The sheet behind the lens; present where the filter goes there.",
    ).optional(),
    procedure: list(
      text({ description: "A step, ready to read out.", example: "Screw the rings on by hand." }),
      {
        description: "What to do, in order. Common practice.",
        example: [
          "Screw the rings on by hand in the order given, without force.",
          "Change it on dry land only, away from sand and spray.",
        ],
      },
    ),
    procedure_steps: list(Statement, {
      description: "The same, each step as its code and what its text is made of.",
      example: [
        { code: "chain_assemble", parameters: {} },
        { code: "dry_land_only", parameters: {} },
      ],
    }),
    ...answerTail,
  })
  .describe("Where the filter goes on this lens and port, and what that does to corners and focus.");
export type FilterMountingAnswer = z.infer<typeof FilterMountingAnswer>;
