import { z } from "zod/v3";
import { list } from "../field/choice.js";
import { withOptionalBut } from "../field/optional.js";
import { bottomFields } from "./bottom.js";
import { cameraFields, resolvedCameraFields } from "./camera.js";
import { daylightFields } from "./daylight.js";
import { sceneDefaults } from "./defaults.js";
import { diveFields, resolvedDiveFields } from "./dive.js";
import { everyResolvedSceneFields, everySceneFields } from "./every-scene.js";
import { FilterFit, filterSamplesField } from "./filter-samples.js";
import { kitField, resolvedKitField } from "./kit.js";
import { flatLampFields, lampsField, resolvedLampsField, wantedLeadFields } from "./lamps.js";
import { lensFilterFields, lensFilterStops } from "./lens-filter.js";
import { mountingInSceneFields } from "./mounting/in-scene.js";
import { overheadFields } from "./overhead.js";
import { sensorField } from "./sensor.js";
import { textsAskedFields } from "./texts-asked.js";
import { viewFields } from "./view.js";
import { waterFields } from "./water.js";

/** What a caller says of a dive: one flat object, everything optional here; the cross-field rules say what must be there. */
export const Scene = z
  .object({
    ...waterFields,
    ...daylightFields,
    ...overheadFields,
    ...diveFields,
    ...viewFields,
    ...bottomFields,
    ...cameraFields,
    ...sensorField,
    ...lensFilterFields,
    ...lensFilterStops,
    ...filterSamplesField("The filter on the lens"),
    ...kitField,
    ...lampsField,
    ...flatLampFields,
    ...wantedLeadFields,
    ...mountingInSceneFields,
    ...everySceneFields,
    ...textsAskedFields,
  })
  .partial()
  .strict()
  .describe(
    "What you film, where and with what. Needs exactly one way to describe the water, and a depth; all else has a default or may be left out.",
  );
export type Scene = z.infer<typeof Scene>;

/** Defaults that fill a field in only where nothing else was said that decides it, or something that it goes with. */
const {
  sun_elevation_deg: _height,
  sun_side: _side,
  bottom: _bottom,
  recording_curve: _curve,
  frame_rate_fps: _rate,
  shutter_angle_deg: _angle,
  ...always
} = sceneDefaults;

/** Fields that every resolved scene has: those with a default, and those that the caller gives in one way or another. */
const needed = [
  ...(Object.keys(always) as (keyof typeof always)[]),
  "min_depth_m",
  "max_depth_m",
  "shutter_s",
] as const;

/** The scene that was answered. Sent again without `assumed` and `filter_fits`, it gives the same answer. */
export const ResolvedScene = z
  .object({
    ...withOptionalBut(
      {
        ...waterFields,
        ...daylightFields,
        ...overheadFields,
        ...resolvedDiveFields,
        ...viewFields,
        ...bottomFields,
        ...resolvedCameraFields,
        ...sensorField,
        ...lensFilterFields,
        ...resolvedKitField,
        ...wantedLeadFields,
        ...mountingInSceneFields,
      },
      needed,
    ),
    ...resolvedLampsField,
    filter_fits: list(FilterFit, {
      description: "The filters that `filter_samples` were found to be; absent without any.",
      example: [],
    }).optional(),
    ...everyResolvedSceneFields(
      { description: "Name of a field, `lamps/0/count` for one inside a list.", example: "bits" },
      ["cloud_oktas", "wind_speed_m_s", "bits"],
    ),
  })
  .describe("The scene that was answered, with every default filled in and in one fixed form.");
export type ResolvedScene = z.infer<typeof ResolvedScene>;
