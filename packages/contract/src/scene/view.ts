import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { sunSides } from "./values.js";

export const SunSide = z
  .enum(sunSides)
  .describe(
    "Where the sun stands, seen from above: `behind_camera` (within 60 degrees of straight behind it), `beside` it, `in_frame` (within 60 degrees of where it looks), or `unknown`: any of them.",
  );

/** Which way the camera looks. */
export const viewFields = {
  sun_side: choice(SunSide, {
    description:
      "Where the sun stands against the camera. With the sun behind the camera the subject is brighter and the open water is not. Left out where `camera_heading_deg` says it. A subject that faces `up` or the `sun` (`subject_facing`) is lit from there whichever way the camera looks; the open water behind it still goes by this.",
    example: "behind_camera",
    default: sceneDefaults.sun_side,
  }),
  camera_heading_deg: quantity({
    description:
      "Where the camera looks, from north through east, in place of `sun_side`. Only with `daylight_basis` `place_time`, which says where the sun stands.",
    unit: "deg",
    min: 0,
    max: 360,
    example: 200,
  }),
  camera_tilt_deg: quantity({
    description:
      "How far the camera looks up (above 0) or down (below 0). Subject and card, where they face the camera, tilt with it, and open water is as bright as it is where the camera looks, up to 35 degrees up.",
    unit: "deg",
    min: -90,
    max: 90,
    example: -20,
    default: sceneDefaults.camera_tilt_deg,
  }),
};
