import { combinedSigma, REFERENCE_MU0, type WaterSigma } from "@sunfathom/optics";
import type { LightCauses } from "../codes/causes.js";
import type { Coded } from "../codes/coded.js";
import type { Conditions } from "../light/conditions.js";
import { isCovered } from "../light/is-covered.js";
import { overheadSigma } from "../light/overhead.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "./nuisance.js";

/** A named cause of doubt; `shift` gives the model at z standard deviations of it. */
export type Cause = Coded<LightCauses> & { shift(z: number): Partial<Nuisance> };

/** Clear-sky level to about 10 %, cloud to about 30 % (Kasten & Czeplak 1980), in stops. */
const CLEAR_SIGMA_STOPS = 0.15;
const CLOUD_SIGMA_STOPS = 0.4;

/** Of the closed forms for subject and card about the photon tracing that they were fitted to. */
const LIGHT_FIELD_SIGMA_LN = 0.07;
/** Tables say "high sun": 30 to 40 degrees from overhead, more or less sky. From memory. */
const REFERENCE_MU0_SIGMA = 0.03;
/** Floors of one name differ: sand from half of its mean to a reflectance of 0.5 (from memory). */
const FLOOR_SIGMA_LN = 0.5;

/**
 * Of a narrow beam that is even up to its edge over one of the same angle and flux that falls off: ln(1 / ln 2), exact. One with a hot
 * spot and spill lies as far below; lumens are stated of the LEDs rather than of the lamp (from memory).
 */
const BEAM_SIGMA_LN = -Math.log(Math.LN2);

const daylightSigma = (oktas: number) =>
  Math.hypot(CLEAR_SIGMA_STOPS, CLOUD_SIGMA_STOPS * Math.min(1, oktas / 4));

const attenuationCause = ({ cause, sigma_ln }: WaterSigma): Cause => ({
  code: cause,
  parameters: {},
  shift: (z) => ({ kdRemainderScale: Math.exp(sigma_ln * z) }),
});

function scatteringCause({ water }: Conditions): Cause {
  const seen = water.beam_attenuation_530;
  const sigma = seen ? seen.sigma_ln : combinedSigma(water.scattering_sigmas);
  return {
    code: "water_scattering",
    parameters: { known_by: seen ? "sight" : "attenuation" },
    shift: (z) => ({ scatteringScale: Math.exp(sigma * z) }),
  };
}

/** The causes that bear on a scene; those without a bearing (cloud at night, lamps that are off) are left out. */
export function causesOf(conditions: Conditions): Cause[] {
  const { scene, daylight, water } = conditions;
  const causes: Cause[] = [
    ...water.remainder_sigmas.map(attenuationCause),
    scatteringCause(conditions),
    {
      code: "path_scattering",
      parameters: {},
      shift: (z) => ({ scatterLost: Math.min(1, 0.5 * 2 ** (0.8 * z)) }),
    },
  ];
  if (!scene.sensor_samples) {
    causes.push({
      code: "sensor",
      parameters: {},
      shift: (z) => ({ crosstalkSd: z }),
    });
  }
  if (daylight) {
    const sigma = daylightSigma(scene.cloud_oktas);
    causes.push(
      {
        code: "daylight_level",
        parameters: {},
        shift: (z) => ({ daylightScale: 2 ** (sigma * z) }),
      },
      {
        code: "upright_share",
        parameters: {},
        shift: (z) => ({ facing: z }),
      },
      {
        code: "light_field",
        parameters: {},
        shift: (z) => ({ uprightScale: Math.exp(LIGHT_FIELD_SIGMA_LN * z) }),
      },
      {
        code: "reference_sun",
        parameters: {},
        shift: (z) => ({ referenceMu0: REFERENCE_MU0 + REFERENCE_MU0_SIGMA * z }),
      },
    );
    if (isCovered(scene)) {
      const sigma_ln = overheadSigma(scene);
      causes.push({
        code: "overhead",
        parameters: {},
        shift: (z) => ({ overheadScale: Math.exp(sigma_ln * z) }),
      });
    }
    if (conditions.floor) {
      causes.push({
        code: "sea_floor",
        parameters: {},
        shift: (z) => ({ floorScale: Math.exp(FLOOR_SIGMA_LN * z) }),
      });
    }
  }
  if (scene.lamps.length > 0) {
    causes.push(
      {
        code: "lamp_beam",
        parameters: {},
        shift: (z) => ({ lampIntensityScale: Math.exp(BEAM_SIGMA_LN * z) }),
      },
      {
        code: "lamp_aim",
        parameters: {},
        shift: (z) => ({ lampAim: z }),
      },
    );
  }
  return causes;
}

/** Causes that bear only where filters are compared. */
export const FILTER_CAUSES: Cause[] = [
  {
    code: "filter_edge",
    parameters: {},
    shift: (z) => ({ filterShape: { shift_nm: 8 * z } }),
  },
  {
    code: "filter_width",
    parameters: {},
    shift: (z) => ({ filterShape: { widthScale: Math.exp(0.25 * z) } }),
  },
  {
    code: "full_well",
    parameters: {},
    shift: (z) => ({ fullWellScale: 2 ** (0.8 * z) }),
  },
];

/** Of a filter that is known by pictures of a card. */
const SAMPLED: Cause = {
  code: "filter_density",
  parameters: {},
  shift: (z) => ({ filterDensityErrors: z }),
};

/** Causes that bear on what a scene's filters take of light, and in `filter-choice` also on noise. */
export const filterCausesOf = ({ filter_fits = [] }: Pick<Scene, "filter_fits">): Cause[] =>
  filter_fits.length > 0 ? [...FILTER_CAUSES, SAMPLED] : FILTER_CAUSES;

/** Causes that bear on haze lit by lamps alone. */
export const LIT_HAZE_CAUSES: Cause[] = [
  {
    code: "lamp_offset",
    parameters: {},
    shift: (z) => ({ lampOffsetScale: 2 ** (0.6 * z) }),
  },
];

export const nuisanceAt = (cause: Cause, z: number): Nuisance => ({ ...NOMINAL, ...cause.shift(z) });
