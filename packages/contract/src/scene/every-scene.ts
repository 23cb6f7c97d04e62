import { list, text } from "../field/choice.js";

/** Fields that a scene of any kind takes. */
export const everySceneFields = {
  expect_model_version: text({
    description:
      "Answer only if the model has this version (as `model.version` of an earlier answer says); otherwise a 409 problem.",
    example: "2026.11.1",
    maxLength: 64,
  }),
};

/**
 * Fields that a resolved scene of any kind has.
 * @param name one of `example`
 * @param example names of fields
 */
export function everyResolvedSceneFields(
  name: { description: string; example: string },
  example: readonly string[],
) {
  return {
    assumed: list(text(name), {
      description: "Fields that you left out: a default filled them in, or the answer says what it assumes.",
      example,
    }),
  };
}
