import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { list, text } from "../field/choice.js";

/** An answer in few bytes. */
export const Brief = z
  .object({
    headline: text({
      description:
        "The answer in a sentence or a few: of a plan its `summary` without the `close_calls`, which stand in the whole answer. Where the brief answer would be too long, its last sentences, in the end its last words, are left out, and it ends in an ellipsis (…).",
      example: "Over 5 to 18 m a red filter of density 0.9 leaves the smallest colour error.",
    }),
    answer: annotate(
      z
        .object({})
        .describe(
          "The main fields of the whole answer, in the same form; of the depths, the shallowest and the deepest. Which fields depends on the calculation; more may come. Where the brief answer is too long with the shortest headline, its longest fields are left out, the longest first.",
        ),
      { examples: [{ filter_kind: "red", filter_density: 0.9 }] },
    ),
    caution: text({
      description: "The first of the answer's cautions. Show it wherever you show the answer.",
      example: "This plans pictures, not dives: training, local rules and your computer decide the dive.",
    }),
    caution_codes: list(text({ description: "Code of a caution.", example: "not_a_dive_planner" }), {
      description: "Codes of all of its cautions, that one first.",
      example: ["not_a_dive_planner"],
    }),
    model_version: text({ description: "The model that answered.", example: "2026.11.1" }),
  })
  .describe(
    "An answer in less than 700 bytes, for a label or a list, whatever the scene and the language. What is cut for that is the headline, and then the answer; never a caution.",
  );
