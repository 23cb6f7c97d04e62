import { z } from "zod/v3";
import { withOptional, withOptionalBut } from "../../field/optional.js";
import { everyResolvedSceneFields, everySceneFields } from "../every-scene.js";
import { textsAskedFields } from "../texts-asked.js";
import { mountingDefaults } from "./defaults.js";
import { mountedFilterFields, ringsField } from "./filter.js";
import { kindFields, lensFields } from "./lens.js";

const mayBeLeftOut = {
  ...lensFields,
  ...mountedFilterFields,
  ...ringsField,
  ...everySceneFields,
  ...textsAskedFields,
};

/** Camera, port and filter as a caller describes them; the cross-field rules say what else must be there. */
export const MountingScene = z
  .object({
    ...kindFields,
    ...withOptional(mayBeLeftOut, Object.keys(mayBeLeftOut) as (keyof typeof mayBeLeftOut)[]),
  })
  .strict()
  .describe(
    "Camera, port, filter and rings. Needs the kinds of port and lens, and what the lens sees: a field of view, or a focal length with the sensor's diagonal.",
  );
export type MountingScene = z.infer<typeof MountingScene>;

/** The scene that was answered. Sent again without `assumed`, it gives the same answer. */
export const ResolvedMountingScene = z
  .object({
    ...kindFields,
    ...withOptionalBut(
      { ...lensFields, ...mountedFilterFields },
      Object.keys(mountingDefaults) as (keyof typeof mountingDefaults)[],
    ),
    ...ringsField,
    ...everyResolvedSceneFields({ description: "Name of a field.", example: "f_number" }, [
      "f_number",
      "filter_thickness_mm",
      "rear_fixing",
    ]),
  })
  .describe(
    "Camera, port, filter and rings as they were answered, with every default filled in and in one fixed form.",
  );
export type ResolvedMountingScene = z.infer<typeof ResolvedMountingScene>;
