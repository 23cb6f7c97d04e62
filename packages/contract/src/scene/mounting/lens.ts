import { z } from "zod/v3";
import { choice, flag } from "../../field/choice.js";
import { quantity } from "../../field/quantity.js";
import { lensKinds, portKinds, wetLenses } from "../values.js";
import { mountingDefaults } from "./defaults.js";

export const PortKind = z
  .enum(portKinds)
  .describe(
    "What stands between the lens and the water: a `flat` port, a `dome`, or `none` for a camera that is watertight without a housing, behind its own flat window.",
  );

export const LensKind = z
  .enum(lensKinds)
  .describe(
    "How a lens draws: `wide` and `standard` keep straight lines straight, a `fisheye` does not. Lenses of standard view have their entrance pupil farther in than wide ones.",
  );

const WetLens = z
  .enum(wetLenses)
  .describe(
    "A lens on the outside of the port, in the water: a `wide` one for a wider view, a `close_up` one for small things, or `none`.",
  );

export const thread = { unit: "mm", min: 20, max: 150 } as const;

/** What a scene must say of port and lens. */
export const kindFields = {
  port_kind: choice(PortKind, {
    description: "What stands between the lens and the water.",
    example: "flat",
  }),
  lens_kind: choice(LensKind, { description: "How the lens draws.", example: "wide" }),
};

/** Port and lens further. */
export const lensFields = {
  dome_radius_mm: quantity({
    description: "Radius of curvature of the dome. Only with `port_kind` `dome`.",
    unit: "mm",
    min: 20,
    max: 500,
    example: 110,
  }),
  focal_length_mm: quantity({
    description:
      "Focal length at the widest setting that you use: the real one, not an equivalent. With `sensor_diagonal_mm`, or beside `field_of_view_deg`.",
    unit: "mm",
    min: 1,
    max: 300,
    example: 16,
  }),
  sensor_diagonal_mm: quantity({
    description: "Diagonal of the picture on the sensor. With `focal_length_mm`.",
    unit: "mm",
    min: 3,
    max: 80,
    example: 43.3,
  }),
  field_of_view_deg: quantity({
    description:
      "Full angle that the lens sees over the picture's diagonal, in air. In place of `focal_length_mm`, or beside it.",
    unit: "deg",
    min: 1,
    max: 220,
    example: 107,
  }),
  f_number: quantity({
    description: "Aperture at which to look at corners and focus.",
    unit: "1",
    min: 0.7,
    max: 64,
    example: 8,
    default: mountingDefaults.f_number,
  }),
  lens_interchangeable: flag({
    description: "Whether the lens comes off the camera, so that something can be put behind it.",
    example: true,
    default: mountingDefaults.lens_interchangeable,
  }),
  lens_thread_mm: quantity({
    ...thread,
    description: "Filter thread on the front of the lens; the lens has none when left out.",
    example: 52,
  }),
  port_thread_mm: quantity({
    ...thread,
    description: "Filter thread on the outside of the port; the port has none when left out.",
    example: 67,
  }),
  port_outer_diameter_mm: quantity({
    description: "Outer diameter of the port, which a clip or a hinge without a thread goes over.",
    unit: "mm",
    min: 20,
    max: 400,
    example: 84,
  }),
  wet_lens: choice(WetLens, {
    description: "What lens is on the outside of the port. Not with a dome.",
    example: "wide",
    default: mountingDefaults.wet_lens,
  }),
  zoom_travel_mm: quantity({
    description:
      "How far the front of the lens moves forward from the setting that is described to its longest one: 0 for a fixed focal length, and for a zoom that keeps its length.",
    unit: "mm",
    min: 0,
    max: 200,
    example: 12,
    default: mountingDefaults.zoom_travel_mm,
  }),
  lens_port_gap_mm: quantity({
    description:
      "Free room between the front rim of the lens and the port's glass, at the setting that is described. Not known when left out.",
    unit: "mm",
    min: 0,
    max: 300,
    example: 14,
  }),
  entrance_pupil_distance_mm: quantity({
    description:
      "How far inside the lens has its entrance pupil, counted from the lens's front rim, or from the window of a camera with `port_kind` `none`. Assumed when left out; the answer says what.",
    unit: "mm",
    min: 0.5,
    max: 200,
    example: 24,
  }),
};
