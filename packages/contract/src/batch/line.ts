import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { batchEnds, batchLineKinds, mostVaried, mostVaryEntries } from "./values.js";

export const BatchLineKind = z.enum(batchLineKinds).describe("What a line of a batch is.");

export const BatchEnd = z.enum(batchEnds).describe("Why a batch ended before all was answered.");

const count = (description: string, example: number) =>
  quantity({ description, unit: "1", min: 0, max: mostVaried, integer: true, decimals: 0, example });

export const BatchSummary = z
  .object({
    items: count("Scenes that the batch has.", 308),
    answers: count("Of them, those that were answered.", 307),
    problems: count("Of them, those that have a problem.", 1),
    left: count("Of them, those that the batch did not come to: 0 unless `ended_by` says why.", 0),
    cost: quantity({
      description: "What they cost, in the units of `RateLimit`.",
      unit: "1",
      min: 0,
      max: 1e9,
      decimals: 0,
      example: 4312,
    }),
    ended_by: choice(BatchEnd, {
      description:
        "Why some are left: ten minutes were over (`time`), or the service is stopping. Ask for these again.",
      example: "time",
    }).optional(),
  })
  .describe("How a batch ended.");

const beside = {
  id: text({
    description:
      "Of an answer or a problem: the item's `id`; of a scene that `vary` made, its places in `vary`, such as `1-0`.",
    example: "gannet-0930",
  }),
  at: list(
    quantity({
      description: "Place of a value.",
      unit: "1",
      min: 0,
      max: mostVaried,
      integer: true,
      decimals: 0,
      example: 1,
    }),
    {
      description: "Of a scene that `vary` made: for each entry of `vary`, the place of its value, from 0.",
      maxItems: mostVaryEntries,
      example: [1, 0],
    },
  ),
  answer: annotate(
    z
      .object({})
      .describe(
        "The answer, the same as that of the operation alone, to the byte: whole, or the `fields` asked for.",
      ),
    { examples: [{ filter_kind: "red", filter_density: 1.1 }] },
  ),
  problem: annotate(
    z.object({}).describe("Why there is no answer (RFC 9457), the same as that of the operation alone."),
    { examples: [{ status: 400, code: "invalid_scene" }] },
  ),
  summary: BatchSummary,
};

/** One line of what comes back. */
export const BatchLine = z
  .object({
    kind: choice(BatchLineKind, {
      description:
        "`answer` or `problem` for a scene; `pause` where none is ready yet, to keep the connection open; `summary` for the last line, without which the stream was cut.",
      example: "answer",
    }),
    ...withOptional(beside, Object.keys(beside) as (keyof typeof beside)[]),
  })
  .describe("A line of the stream: one JSON object. Answers come as they are ready, in any order.");
