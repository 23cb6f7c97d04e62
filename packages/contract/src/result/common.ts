import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { ResolvedScene } from "../scene/scene.js";

export const Figure = z
  .object({
    name: text({
      description: "What the figure is, with its unit at the end where it has one.",
      example: "red_loss_stops",
    }),
    value: quantity({
      description: "Its value.",
      unit: "1",
      decimals: 4,
      min: -1e12,
      max: 1e12,
      example: 3.04,
    }),
  })
  .describe("A figure that a reason rests on.");

export const ReasonBasis = z
  .enum(["computed", "common_practice"])
  .describe(
    "Where a reason comes from: `computed` by the model, or `common_practice` without a published source.",
  );

export const Reason = z
  .object({
    code: text({ description: "Stable code, for programs and translations.", example: "red_lost" }),
    text: text({
      description: "One or two plain sentences.",
      example: "At 12 m the water has taken 3.0 stops of red.",
    }),
    basis: choice(ReasonBasis, { description: "Where the reason comes from.", example: "computed" }),
    figures: list(Figure, {
      description: "The figures that it rests on.",
      example: [{ name: "red_loss_stops", value: 3.04 }],
    }),
  })
  .describe("Why the answer is what it is.");

export const Caution = z
  .object({
    code: text({ description: "Stable code, for programs and translations.", example: "lamp_heat" }),
    text: text({
      description: "What to take care of.",
      example: "Lamps made for water are cooled by it: switched on in air they can melt a plastic filter.",
    }),
  })
  .describe("What to take care of before acting on the answer.");

export const UncertaintyCause = z
  .object({
    cause: text({ description: "Stable code of the cause.", example: "water_within_type" }),
    text: text({
      description: "The cause in words.",
      example: "Waters of one optical type differ from each other.",
    }),
    share: quantity({
      description: "Share of the variance of the answer's main quantity that it explains.",
      unit: "1",
      decimals: 3,
      min: 0,
      max: 1,
      example: 0.62,
    }),
    how_to_shrink: text({
      description: "What to measure or to state to shrink it.",
      example: "Measure the water and send kd_samples.",
    }),
  })
  .describe("A cause of the answer's uncertainty.");

export const ModelVersion = z
  .object({
    version: text({
      description:
        "Version of the model: year, month and count. It changes when figures of answers do, not with their wording; two answers with the same one can be compared.",
      example: "2026.11.1",
    }),
    sources: list(text({ description: "Id of a source, as /v1/models lists it.", example: "jerlov_1976" }), {
      description: "Tables and formulas that the answer rests on.",
      example: ["jerlov_1976", "cie_1931_observer"],
    }),
  })
  .describe("The model that answered.");

export const answerHead = headOf(ResolvedScene);

/** What an answer begins with, by the kind of scene that it is for. */
export function headOf<T extends z.ZodTypeAny>(resolvedScene: T): { scene: T } {
  return { scene: resolvedScene.describe("The scene that was answered.") };
}

/** What every answer ends with. */
export const answerTail = {
  reasons: list(Reason, {
    description: "Why the answer is what it is, most important first.",
    example: [
      {
        code: "red_lost",
        text: "At 12 m the water has taken 3.0 stops of red.",
        basis: "computed",
        figures: [{ name: "red_loss_stops", value: 3.04 }],
      },
    ],
  }),
  cautions: list(Caution, {
    description: "What to take care of before acting on it.",
    example: [{ code: "not_a_dive_plan", text: "This plans pictures, not dives: follow your training." }],
  }),
  uncertainty: list(UncertaintyCause, {
    description: "What makes the answer uncertain, largest share first.",
    example: [
      {
        cause: "water_within_type",
        text: "Waters of one optical type differ from each other.",
        share: 0.62,
        how_to_shrink: "Measure the water and send kd_samples.",
      },
    ],
  }),
  model: ModelVersion.describe("The model that answered."),
};
