import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { ResolvedScene } from "../scene/scene.js";
import { links } from "./links.js";

/** What a code comes with. */
export function parameters({ example }: { example: object }) {
  const description =
    "All that the text is made of, so that you can put it in other words or in another language: numbers to six decimals, and names. Which ones depends on the code; empty where there are none. More codes and parameters may come.";
  return annotate(z.object({}).describe(description), { examples: [example] });
}

/** A stable code. */
export const code = (example: string) =>
  text({
    description:
      "Stable code, for programs and translations. The examples are all the codes of today, and more may come.",
    example,
  });

export const Statement = z
  .object({
    code: code("going_down"),
    parameters: parameters({ example: { depths_m: [5, 8.2, 13.5] } }),
  })
  .describe("A sentence as its code, and all that it is made of.");

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
  .enum(["computed", "common_practice", "judgement"])
  .describe(
    "Where a reason comes from: `computed` by the model, `common_practice` without a published source, or `judgement`, where what decides is a bound or a usual value that we judged or know from memory, such as the 20 code values below which bands show. How strong a colour error is called is a judgement everywhere.",
  );

const exampleReason = {
  code: "sun_path",
  text: "The sun's slant lengthens the way through the water: the mean path cosine is 0.83, against 0.90 for the tables.",
  basis: "computed",
  figures: [{ name: "mu0", value: 0.8312 }],
  parameters: { mu0: 0.831204 },
} as const;

export const Reason = z
  .object({
    code: code("sun_path"),
    text: text({ description: "One or two plain sentences.", example: exampleReason.text }),
    basis: choice(ReasonBasis, { description: "Where the reason comes from.", example: "computed" }),
    figures: list(Figure, {
      description: "The figures behind it: the numbers among its parameters.",
      example: [...exampleReason.figures],
    }),
    parameters: parameters({ example: exampleReason.parameters }),
  })
  .describe("Why the answer is what it is.");

const exampleCaution = {
  code: "lamps_not_into_eyes",
  text: "Never look into a video light or point it at the eyes of divers or animals.",
} as const;

export const Caution = z
  .object({
    code: code(exampleCaution.code),
    text: text({ description: "What to take care of.", example: exampleCaution.text }),
  })
  .describe("Cautions to heed before acting on the answer.");

const exampleCause = {
  cause: "water_scattering",
  text: "How far you really see, which scattering is estimated from",
  share: 0.62,
  how_to_shrink: "Measure the visibility along a line.",
  parameters: { known_by: "sight" },
} as const;

export const UncertaintyCause = z
  .object({
    cause: text({
      description: "Stable code of the cause. The examples are all the codes of today, and more may come.",
      example: exampleCause.cause,
    }),
    text: text({ description: "The cause in words.", example: exampleCause.text }),
    share: quantity({
      description: "Share of the variance of the answer's main quantity that it explains.",
      unit: "1",
      decimals: 3,
      min: 0,
      max: 1,
      example: exampleCause.share,
    }),
    how_to_shrink: text({
      description: "What to measure or to send to make the answer surer.",
      example: exampleCause.how_to_shrink,
    }),
    parameters: parameters({ example: exampleCause.parameters }),
  })
  .describe("A cause of the answer's uncertainty.");

export const ModelVersion = z
  .object({
    version: text({
      description:
        "Version of the model: year, month and count. It changes when figures of answers do, not with their wording; you can compare two answers of the same version.",
      example: "2026.11.1",
    }),
    sources: list(text({ description: "Id of a source, as /v1/models lists it.", example: "jerlov_1976" }), {
      description: "Tables and formulas behind the answer.",
      example: ["jerlov_1976", "cie_1931_observer"],
    }),
  })
  .describe("The model that answered.");

export const answerHead = headOf(ResolvedScene);

/** What an answer begins with, by the kind of scene that it is for. */
export function headOf<T extends z.ZodTypeAny>(resolvedScene: T): { scene: T } {
  return { scene: resolvedScene.describe("The scene that was answered.") };
}

/** What all advice ends with. */
export const adviceTail = {
  reasons: list(Reason, {
    description: "Why the answer is what it is, most important first.",
    example: [{ ...exampleReason, figures: [...exampleReason.figures] }],
  }),
  cautions: list(Caution, {
    description: "Cautions to heed before acting on it.",
    example: [exampleCaution],
  }),
  uncertainty: list(UncertaintyCause, {
    description: "What makes the answer uncertain, largest share first.",
    example: [exampleCause],
  }),
  model: ModelVersion.describe("The model that answered."),
};

/** What the answer of a calculation ends with. */
export const answerTail = { ...adviceTail, links };
