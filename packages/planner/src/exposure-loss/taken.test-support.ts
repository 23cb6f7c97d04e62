import { BRIGHT_REEF, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import type { ExposureAtDepth, WayToPay } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { exposureLoss } from "./exposure-loss.js";

/** With a lens that closes far enough. */
export const BRIGHT_TO_F32: Scene = { ...BRIGHT_REEF, max_f_number: 32 };

export const at = (scene: Scene): ExposureAtDepth => exposureLoss(scene).depths[0];
/** A flat measured filter of a density. */
const flat = (density: number) =>
  [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 10 ** -density }));

/** The scene with a way to pay taken as it says. */
export function taken(scene: Scene, way: WayToPay): Scene {
  const {
    way: kind,
    iso,
    f_number,
    shutter_s,
    neutral_density,
    depth_m,
    sun_elevation_deg,
    lamp_flux_lm,
  } = way;
  switch (kind) {
    case "iso":
    case "aperture":
      return {
        ...scene,
        ...(iso === undefined ? {} : { iso }),
        ...(f_number === undefined ? {} : { f_number }),
      };
    case "shutter":
      return { ...scene, shutter_s: shutter_s ?? Number.NaN };
    case "neutral_density":
      return { ...scene, filter_transmittance: flat(neutral_density ?? Number.NaN) };
    case "shallower":
      return { ...scene, min_depth_m: depth_m ?? Number.NaN, max_depth_m: depth_m ?? Number.NaN };
    case "higher_sun":
      return { ...scene, sun_elevation_deg: sun_elevation_deg ?? Number.NaN };
    case "lamp": {
      const extra = { ...TWO_LAMPS, count: 1, flux_lm: lamp_flux_lm ?? Number.NaN };
      return { ...scene, lamps: [...scene.lamps, extra] };
    }
    case "filter_off": {
      const { filter_kind: _, filter_density: __, ...bare } = scene;
      return bare;
    }
  }
}

/** Kinds of way that were tried and did not do what they promise. */
export const broken = (scene: Scene): string[] =>
  at(scene)
    .ways_to_pay.filter(({ enough }) => enough)
    .filter((way) => at(taken(scene, way)).verdict !== "fits")
    .map(({ way }) => way);
