import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { calculationNames } from "../operation-names.js";
import { everySceneFields } from "../scene/every-scene.js";
import { textsAskedFields } from "../scene/texts-asked.js";
import { mostBatchItems, mostVaried, mostVaryEntries } from "./values.js";

export const BatchOperation = z.enum(calculationNames).describe("The name of a calculation.");

/** A scene as it comes: each is checked when its turn comes, so that one that is wrong keeps no other from its answer. */
const anyScene = (description: string) =>
  annotate(z.object({}).describe(description), { examples: [{ water_type: "IB", depth_m: 12 }] });

export const BatchItem = z
  .object({
    id: text({
      description: "Your name for this item, which its line carries. No two items have the same.",
      example: "gannet-0930",
      maxLength: 64,
    }),
    operation: choice(BatchOperation, { description: "What to calculate.", example: "filter-choice" }),
    scene: anyScene(
      "The scene, as the operation takes it alone. The item's line says what is wrong with it.",
    ),
  })
  .strict()
  .describe("One scene, and what to calculate of it.");

const fields = {
  items: list(BatchItem, {
    description: `Scenes one by one, up to ${mostBatchItems}. Either these, or \`operation\`, \`scene\` and \`vary\`.`,
    example: [
      { id: "gannet-0930", operation: "attenuation", scene: { water_type: "IB", depth_m: 12 } },
      { id: "mole-0930", operation: "exposure-loss", scene: { water_type: "5C", depth_m: 8 } },
    ],
    minItems: 1,
    maxItems: mostBatchItems,
  }),
  operation: choice(BatchOperation, {
    description: "What to calculate of every scene that `vary` makes.",
    example: "attenuation",
  }),
  scene: anyScene("What all scenes that `vary` makes have in common. Empty where they have nothing."),
  vary: list(
    z
      .object({})
      .describe("Names of fields of the scene, each with the list of its values, all equally long."),
    {
      description: `What differs. Each entry names one field with its values, or several that go together, value by value; the entries are multiplied, the last one running fastest, and give up to ${mostVaried} scenes. A field that the scene has already is replaced.`,
      example: [{ depth_m: [12, 8], visibility_m: [25, 12] }, { sun_elevation_deg: [20, 40, 60] }],
      minItems: 1,
      maxItems: mostVaryEntries,
    },
  ),
  language: textsAskedFields.language,
  units: textsAskedFields.units,
  ...everySceneFields,
};

/** Many scenes in one call. */
export const BatchRequest = z
  .object(withOptional(fields, Object.keys(fields) as (keyof typeof fields)[]))
  .strict()
  .describe(
    "Many scenes: `items` one by one, or one `scene` with what differs in `vary`. `language` and `units` hold for every scene that does not say its own.",
  );
export type BatchRequest = z.infer<typeof BatchRequest>;
