import { z } from "zod/v3";
import { withOptional } from "../field/optional.js";
import { bottomFields } from "./bottom.js";
import { cameraFields, resolvedCameraFields } from "./camera.js";
import { daylightFields } from "./daylight.js";
import { diveFields, resolvedDiveFields } from "./dive.js";
import { everyResolvedSceneFields, everySceneFields } from "./every-scene.js";
import { kitField } from "./kit.js";
import { flatLampFields, lampsField, resolvedLampsField } from "./lamps.js";
import { lensFilterFields } from "./lens-filter.js";
import { placeTimeNames } from "./place-time-names.js";
import { viewFields } from "./view.js";
import { waterFields } from "./water.js";

/** What a caller says of a dive: one flat object, everything optional here; the cross-field rules say what must be there. */
export const Scene = z
  .object({
    ...waterFields,
    ...daylightFields,
    ...diveFields,
    ...viewFields,
    ...bottomFields,
    ...cameraFields,
    ...lensFilterFields,
    ...kitField,
    ...lampsField,
    ...flatLampFields,
    ...everySceneFields,
  })
  .partial()
  .strict()
  .describe(
    "What is filmed, where and with what. Exactly one way to describe the water and a depth are needed; all else has a default or may be left out.",
  );
export type Scene = z.infer<typeof Scene>;

const waterFieldNames = Object.keys(waterFields) as (keyof typeof waterFields)[];

/** The scene that was answered. Sent again without `assumed`, it gives the same answer. */
export const ResolvedScene = z
  .object({
    ...withOptional(waterFields, waterFieldNames),
    ...withOptional(daylightFields, ["sun_elevation_deg", ...placeTimeNames]),
    ...resolvedDiveFields,
    ...withOptional(viewFields, ["sun_side", "camera_heading_deg"]),
    ...withOptional(bottomFields, ["bottom", "bottom_reflectance", "bottom_depth_m"]),
    ...withOptional(resolvedCameraFields, [
      "iso",
      "f_number",
      "frame_rate_fps",
      "balance_tolerance_delta_e00",
    ]),
    ...withOptional(lensFilterFields, ["filter_kind", "filter_density", "filter_transmittance"]),
    ...withOptional(kitField, ["kit"]),
    ...resolvedLampsField,
    ...everyResolvedSceneFields(
      { description: "Name of a field, `lamps/0/count` for one inside a list.", example: "bits" },
      ["cloud_oktas", "wind_speed_m_s", "bits"],
    ),
  })
  .describe("The scene that was answered, with every default filled in and in one fixed form.");
export type ResolvedScene = z.infer<typeof ResolvedScene>;
