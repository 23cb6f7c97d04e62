import {
  type CardFit,
  coastalShareOf,
  describeByChlorophyll,
  describeByClarity,
  describeByType,
  JERLOV_TYPES,
  kdFromTable,
  OpticsDomainError,
  SCATTERING_SIGMA_LN,
  scatteringScaleForBeam,
  type WaterDescription,
} from "@sunfathom/optics";
import type { KdSample, Scene, WaterBasis } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { fitCardWater } from "./card-water.js";
import type { Daylight } from "./daylight.js";
import { WaterStates } from "./water-states.js";

/** A measured diffuse attenuation is taken as good to 5 %. */
const MEASURED_KD_SIGMA_LN = 0.05;

/** What a scene says of its water. */
export interface DescribedWater extends WaterDescription {
  /** Factor on particle scattering that the description asks for; 1 unless the beam attenuation was seen. */
  scatteringScale: number;
  /** How well a water fits the card samples; present where they describe it. */
  cardFit?: CardFit;
  /** Ids of the tables and formulas that it rests on (see `models`). */
  sources: string[];
  /** What has been worked out of it. */
  states: WaterStates;
  /** What light does in it, as far as that has been worked out: see `underwater`, which alone puts something here and reads it. */
  lights: unknown[];
}

interface Basis {
  field: keyof WaterBasis;
  sources: string[];
  describe(
    scene: Scene,
    daylight: Daylight | undefined,
  ): (WaterDescription & { cardFit?: CardFit }) | undefined;
}

/** Every way to describe a water. Exactly one of the fields is present in a scene. */
const BASES: readonly Basis[] = [
  {
    field: "water_type",
    sources: ["jerlov_1976", "pope_fry_1997"],
    describe: ({ water_type }) => {
      const type = JERLOV_TYPES.find((name) => name === water_type);
      return type && describeByType(type);
    },
  },
  {
    field: "chlorophyll_mg_m3",
    sources: ["morel_maritorena_2001", "pope_fry_1997"],
    describe: ({ chlorophyll_mg_m3 }) =>
      chlorophyll_mg_m3 === undefined ? undefined : describeByChlorophyll(chlorophyll_mg_m3),
  },
  {
    field: "secchi_depth_m",
    sources: ["lee_2015", "water_family", "jerlov_1976", "pope_fry_1997"],
    describe: ({ secchi_depth_m, water_hue }) =>
      secchi_depth_m === undefined || !water_hue
        ? undefined
        : describeByClarity("secchi_depth_m", secchi_depth_m, water_hue),
  },
  {
    field: "visibility_m",
    sources: ["visibility_contrast", "water_family", "jerlov_1976", "pope_fry_1997"],
    describe: ({ visibility_m, water_hue }) =>
      visibility_m === undefined || !water_hue
        ? undefined
        : describeByClarity("visibility_m", visibility_m, water_hue),
  },
  {
    field: "kd_samples",
    sources: ["pope_fry_1997"],
    describe: ({ kd_samples }) => kd_samples && describeByKd(kd_samples),
  },
  {
    field: "card_samples",
    sources: ["card_fit", "water_family", "jerlov_1976", "pope_fry_1997", "mean_sensor"],
    describe: (scene, daylight) => {
      const cardFit = fitCardWater(scene, daylight);
      return cardFit && { ...cardFit.description, cardFit };
    },
  },
];

function describeByKd(samples: readonly KdSample[]): WaterDescription {
  const kd_reference_per_m = kdFromTable(
    samples.map((s) => s.wavelength_nm),
    samples.map((s) => s.kd_per_m),
  );
  return {
    kd_reference_per_m,
    coastalShare: coastalShareOf(kd_reference_per_m),
    remainder_sigmas: [{ cause: "kd_measurement", sigma_ln: MEASURED_KD_SIGMA_LN }],
    scattering_sigmas: [{ cause: "scattering_per_water", sigma_ln: SCATTERING_SIGMA_LN }],
  };
}

/** @throws SceneProblem where the description contradicts itself or lies outside what natural water shows. */
export function describeWater(scene: Scene, daylight: Daylight | undefined): DescribedWater {
  for (const { field, sources, describe } of BASES) {
    if (scene[field] === undefined) continue;
    try {
      const description = describe(scene, daylight);
      if (description === undefined) continue;
      const states = new WaterStates(description.kd_reference_per_m);
      return { ...description, scatteringScale: scaleFor(description), sources, states, lights: [] };
    } catch (error) {
      if (!(error instanceof OpticsDomainError)) throw error;
      throw new SceneProblem(error.refusal, field);
    }
  }
  const parameters = { fields: BASES.map(({ field }) => field) };
  throw new SceneProblem({ code: "water_missing", parameters }, "water_type");
}

function scaleFor(description: WaterDescription): number {
  const { beam_attenuation_530 } = description;
  if (!beam_attenuation_530) return 1;
  return scatteringScaleForBeam(description, beam_attenuation_530.value_per_m) ?? 1;
}
