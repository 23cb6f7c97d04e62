import type { OpticsRefusals } from "@sunfathom/optics";
import type { LensKind, PortKind } from "./filter-mounting-scene.js";

/** Why the light of a scene lies outside what the model can answer, with what was asked and what is possible. */
export interface LightRefusals extends OpticsRefusals {
  sun_too_low: { elevation_deg: number; min_elevation_deg: number };
  no_light:
    | { case: "no_source" }
    | { case: "filter_passes_none"; filter: "lens" | "kit" }
    | { case: "filter_stops_what_is_left"; filter: "lens" | "kit"; depth_m: number };
  /** A channel of the camera receives nothing that a gain could bring back. */
  no_balance: { channel: "red" | "green" | "blue"; depth_m: number };
  no_daylight_left: { depth_m: number; max_depth_m: number; is_daylit: boolean };
  no_sight: { distance_m: number; max_distance_m: number };
  filter_opaque: { case: "lens" | "kit" };
  lamp_unknown: { leds: readonly string[] };
  water_missing: { fields: readonly string[] };
}

/** The same for the lens and the rings of a mounting scene. */
export interface MountingRefusals {
  lens_field_unknown: Record<never, never>;
  corner_outside_image_circle: {
    focal_length_mm: number;
    image_circle_mm: number;
    format_mm: number;
    min_focal_length_mm: number;
  };
  field_too_wide: {
    field_of_view_deg: number;
    max_field_of_view_deg: number;
    lens_kind: LensKind;
    port_kind: PortKind;
  };
  lens_contradicts: { sensor_diagonal_mm: number; follows_mm: number };
  ring_id_twice: { id: string };
}

export interface SceneRefusals extends LightRefusals, MountingRefusals {}

export type SceneRefusalCode = keyof SceneRefusals;

/** A code with its parameters. */
export type SceneRefusal = {
  [Code in SceneRefusalCode]: { code: Code; parameters: SceneRefusals[Code] };
}[SceneRefusalCode];

/** Thrown where a scene is well formed but lies outside what the model can answer. Carries no sentence: those are made elsewhere. */
export class SceneProblem extends Error {
  override readonly name = "SceneProblem";

  constructor(
    readonly refusal: SceneRefusal,
    /** The field of the scene that it concerns. */
    readonly field: string,
    /** The way from that field to what it concerns, as names and indices. */
    readonly within: readonly string[] = [],
  ) {
    super(`${refusal.code} ${JSON.stringify(refusal.parameters)}`);
  }

  get code(): SceneRefusalCode {
    return this.refusal.code;
  }
}
