import { z } from "zod/v3";
import { annotate, withoutDefault } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional, withOptionalBut } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { filterSamplesField } from "../scene/filter-samples.js";
import { kitItemFields } from "../scene/kit.js";
import { lampFields } from "../scene/lamps.js";
import { filterStops } from "../scene/lens-filter.js";
import { mountedFilterFields, StepRing } from "../scene/mounting/filter.js";
import { textsAskedFields } from "../scene/texts-asked.js";
import {
  mostKitDives,
  mostKitPieces,
  mostRingsInARow,
  pieceHolders,
  pieceItems,
  regretLimit_delta_e00,
} from "./values.js";

const id = (whose: string, example: string) =>
  text({
    description: `Your own name for the ${whose}; the answer uses it. No two have the same.`,
    example,
    maxLength: 64,
  });

const sceneField = (description: string) =>
  annotate(z.object({}).describe(description), {
    examples: [{ visibility_m: 25, water_hue: "blue", min_depth_m: 5, max_depth_m: 18 }],
  });

export const KitDive = z
  .object({
    id: id("dive", "outer-reef"),
    scene: sceneField(
      "The dive: a scene as `dive-advice` takes it, without filters, lights and rings, which are pieces. What it says stands before what `scene` says beside the dives.",
    ),
  })
  .strict()
  .describe("A dive that the kit is to serve.");

export const PieceItem = z
  .enum(pieceItems)
  .describe(
    "What a piece is: a filter for the lens, a filter for a video light, a video light (or several equal ones that go together), a step ring, or a holder.",
  );

export const PieceHolder = z
  .enum(pieceHolders)
  .describe(
    "A holder that is a piece of its own: a hinge on the port (`flip`), a clip (`clip_on`), or a frame over an action camera.",
  );

const { filter_kind, filter_density, filter_transmittance } = kitItemFields;
const { filter_thread_mm, filter_clear_diameter_mm, filter_thickness_mm } = mountedFilterFields;
const { flux_lm, count, beam_angle_deg, beam_angle_medium, cct_K, led, distance_m } = lampFields;

const pieceFields = {
  id: id("piece", "red-55"),
  item: choice(PieceItem, { description: "What it is.", example: "lens_filter" }),
  filter_kind,
  filter_density,
  filter_stops: quantity({
    ...filterStops,
    description:
      "Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`.",
  }),
  filter_transmittance,
  ...filterSamplesField("A filter"),
  filter_thread_mm,
  filter_clear_diameter_mm,
  filter_thickness_mm: withoutDefault(filter_thickness_mm),
  flux_lm,
  count: withoutDefault(count),
  beam_angle_deg: withoutDefault(beam_angle_deg),
  beam_angle_medium: withoutDefault(beam_angle_medium),
  cct_K: withoutDefault(cct_K),
  led,
  distance_m,
  from_mm: StepRing.shape.from_mm,
  to_mm: StepRing.shape.to_mm,
  thickness_mm: StepRing.shape.thickness_mm,
  holder: choice(PieceHolder, { description: "Which holder it is.", example: "flip" }),
};

export const KitPiece = z
  .object(withOptionalBut(pieceFields, ["id", "item"]))
  .strict()
  .describe(
    "A filter, as `kit` in a scene takes it, and by its own thread and size, if it has one; a video light; a ring; or a holder. Which fields go with it follows from `item`.",
  );

const fields = {
  scene: sceneField("What all dives have in common, if anything: fields of a scene."),
  dives: list(KitDive, {
    description: `The dives, up to ${mostKitDives}, in any order.`,
    example: [{ id: "outer-reef", scene: { water_type: "IB", min_depth_m: 5, max_depth_m: 18 } }],
    minItems: 1,
    maxItems: mostKitDives,
  }),
  pieces: list(KitPiece, {
    description: `What there is to choose from, up to ${mostKitPieces} pieces, in any order. Lights are used one piece at a time, and up to ${mostRingsInARow} rings are screwed into each other.`,
    example: [{ id: "red-55", item: "lens_filter", filter_kind: "red", filter_density: 0.6 }],
    minItems: 1,
    maxItems: mostKitPieces,
  }),
  regret_limit_delta_e00: quantity({
    description:
      "How much more colour error (CIEDE2000) than with all pieces a dive may have: less than this. By default about what is just seen, a judgement.",
    unit: "1",
    min: regretLimit_delta_e00.least,
    max: regretLimit_delta_e00.most,
    example: regretLimit_delta_e00.usual,
    default: regretLimit_delta_e00.usual,
  }),
  ...textsAskedFields,
  ...everySceneFields,
};

/** Dives, and the pieces to choose from. */
export const KitAdviceRequest = z
  .object(
    withOptional(fields, ["scene", "regret_limit_delta_e00", "language", "units", "expect_model_version"]),
  )
  .strict()
  .describe("Dives, what they have in common, and the pieces to choose a kit from.");
export type KitAdviceRequest = z.infer<typeof KitAdviceRequest>;
