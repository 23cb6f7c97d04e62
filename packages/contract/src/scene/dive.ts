import { z } from "zod/v3";
import { choice, flag } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { subjectFacings } from "./values.js";

const noAdvice = "This service does not plan dives: the range is that of the model, not advice on depth.";
const depth = { unit: "m", min: 0.1, max: 100 } as const;

const range = {
  min_depth_m: quantity({
    ...depth,
    description: `Shallow end of the part of the dive that you film. With \`max_depth_m\`. ${noAdvice}`,
    example: 5,
  }),
  max_depth_m: quantity({
    ...depth,
    description: `Deep end of the part of the dive that you film. With \`min_depth_m\`. ${noAdvice}`,
    example: 18,
  }),
};

export const SubjectFacing = z
  .enum(subjectFacings)
  .describe(
    "Where the filmed side of the subject faces: `up`, the `camera` (wherever that looks) or the `sun`.",
  );

const subject = {
  subject_distance_m: quantity({
    description: "From the camera to the subject, through water.",
    unit: "m",
    min: 0.05,
    max: 20,
    example: 1,
    default: sceneDefaults.subject_distance_m,
  }),
  subject_facing: choice(SubjectFacing, {
    description: "Where the filmed side of the subject faces, and so how much daylight falls on it.",
    example: "camera",
    default: sceneDefaults.subject_facing,
  }),
};

const reach = {
  subject_in_reach: flag({
    description:
      "Whether you can hold a card in front of the subject; `true` by default. With `false` you set the white balance on something at the same depth and distance.",
    example: true,
  }),
};

/** As a caller gives them. */
export const diveFields = {
  depth_m: quantity({
    ...depth,
    description: `Depth of the subject: short for equal \`min_depth_m\` and \`max_depth_m\`. ${noAdvice}`,
    example: 12,
  }),
  ...range,
  ...subject,
  ...reach,
};

/** As the resolved scene holds them. */
export const resolvedDiveFields = { ...range, ...subject, ...reach };
