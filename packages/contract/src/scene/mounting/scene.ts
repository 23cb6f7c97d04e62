import { z } from "zod/v3";
import { withOptional } from "../../field/optional.js";
import { everyResolvedSceneFields, everySceneFields } from "../every-scene.js";
import { mountedFilterFields, ringsField } from "./filter.js";
import { kindFields, lensFields } from "./lens.js";

const mayBeLeftOut = { ...lensFields, ...mountedFilterFields, ...ringsField, ...everySceneFields };

/** Camera, port and filter as a caller describes them; the cross-field rules say what else must be there. */
export const MountingScene = z
  .object({
    ...kindFields,
    ...withOptional(mayBeLeftOut, Object.keys(mayBeLeftOut) as (keyof typeof mayBeLeftOut)[]),
  })
  .strict()
  .describe(
    "Camera, port, filter and rings. The kinds of port and lens are needed, and what the lens sees: a field of view, or a focal length with the sensor's diagonal.",
  );
export type MountingScene = z.infer<typeof MountingScene>;

/** The scene that was answered. Sent again without `assumed`, it gives the same answer. */
export const ResolvedMountingScene = z
  .object({
    ...kindFields,
    ...withOptional(lensFields, [
      "dome_radius_mm",
      "focal_length_mm",
      "sensor_diagonal_mm",
      "field_of_view_deg",
      "lens_thread_mm",
      "port_thread_mm",
      "entrance_pupil_distance_mm",
    ]),
    ...withOptional(mountedFilterFields, [
      "holder",
      "filter_thread_mm",
      "filter_clear_diameter_mm",
      "rear_opening_width_mm",
      "rear_opening_height_mm",
    ]),
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
