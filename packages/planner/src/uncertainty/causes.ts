import { combinedSigma, type WaterSigma } from "@sunfathom/optics";
import type { Conditions } from "../light/conditions.js";
import { underwater, uprightSpreadAt } from "../light/underwater.js";
import { Z90 } from "./normal.js";
import { NOMINAL, type Nuisance } from "./nuisance.js";
import { WATER_CAUSES } from "./water-causes.js";

/** A named cause of doubt; `shift` gives the model at z standard deviations of it. */
export interface Cause {
  id: string;
  text: string;
  how_to_shrink: string;
  shift(z: number): Partial<Nuisance>;
}

/** Clear-sky level to about 10 %, cloud to about 30 % (Kasten & Czeplak 1980), in stops. */
const CLEAR_SIGMA_STOPS = 0.15;
const CLOUD_SIGMA_STOPS = 0.4;

const daylightSigma = (oktas: number) =>
  Math.hypot(CLEAR_SIGMA_STOPS, CLOUD_SIGMA_STOPS * Math.min(1, oktas / 4));

const attenuationCause = ({ cause, sigma_ln }: WaterSigma): Cause => ({
  id: cause,
  ...WATER_CAUSES[cause],
  shift: (z) => ({ kdRemainderScale: Math.exp(sigma_ln * z) }),
});

function scatteringCause({ water }: Conditions): Cause {
  const seen = water.beam_attenuation_530;
  const sigma = seen ? seen.sigma_ln : combinedSigma(water.scattering_sigmas);
  return {
    id: "water_scattering",
    text: seen
      ? "How far one really sees, from which scattering is taken"
      : "How strongly this water scatters, which attenuation alone does not fix",
    how_to_shrink: seen ? "Measure the visibility along a line." : "State the horizontal visibility.",
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
      id: "path_scattering",
      text: "How much of the scattered light still arrives over a short path",
      how_to_shrink: "Come closer: a short path hardly scatters.",
      shift: (z) => ({ scatterLost: Math.min(1, 0.5 * 2 ** (0.8 * z)) }),
    },
    {
      id: "sensor",
      text: "How much green and blue light this camera's red channel sees",
      how_to_shrink: "Photograph a colour chart at depth with this camera.",
      shift: (z) => ({ crosstalkSd: z }),
    },
  ];
  if (daylight) {
    const sigma = daylightSigma(scene.cloud_oktas);
    const middle_m = (scene.min_depth_m + scene.max_depth_m) / 2;
    const upright = uprightSpreadAt(underwater(conditions, NOMINAL), middle_m);
    causes.push(
      {
        id: "daylight_level",
        text: "How bright the sky is",
        how_to_shrink: "State the cloud cover, or measure with a light meter at the surface.",
        shift: (z) => ({ daylightScale: 2 ** (sigma * z) }),
      },
      {
        id: "upright_share",
        text: "How much of the light from above falls on the subject, which may face the sun or away from it",
        how_to_shrink:
          "Say that the subject faces the sun and film with the sun behind you, or meter at depth.",
        shift: (z) => ({ uprightScale: Math.exp((z / Z90) * (z > 0 ? upright.up : upright.down)) }),
      },
    );
  }
  if (scene.lamps.length > 0) {
    causes.push({
      id: "lamp_beam",
      text: "How much brighter the middle of the beam is than an even cone",
      how_to_shrink: "Measure the lamp's illuminance at a known distance.",
      // Real beams peak 1.5 to 3 times higher than an even cone and are weaker at the edge.
      shift: (z) => ({ lampIntensityScale: 2 ** (z > 0 ? 0.8 * z : 0.4 * z) }),
    });
  }
  return causes;
}

/** Causes that bear only where filters are compared. */
export const FILTER_CAUSES: Cause[] = [
  {
    id: "filter_edge",
    text: "Where the filter's absorption band lies, since its curve is an assumed shape",
    how_to_shrink: "Give a measured transmittance curve.",
    shift: (z) => ({ filterShape: { shift_nm: 8 * z } }),
  },
  {
    id: "filter_width",
    text: "How wide the filter's absorption band is, since its curve is an assumed shape",
    how_to_shrink: "Give a measured transmittance curve.",
    shift: (z) => ({ filterShape: { widthScale: Math.exp(0.25 * z) } }),
  },
  {
    id: "full_well",
    text: "How many photons the sensor can hold per pixel",
    how_to_shrink: "Nothing a diver can do: it differs between cameras.",
    shift: (z) => ({ fullWellScale: 2 ** (0.8 * z) }),
  },
];

/** Causes that bear on haze lit by lamps alone. */
export const LIT_HAZE_CAUSES: Cause[] = [
  {
    id: "lamp_offset",
    text: "How far the lamps stand from the line of sight",
    how_to_shrink: "Put the lamps on long arms; nothing to measure.",
    shift: (z) => ({ lampOffsetScale: 2 ** (0.6 * z) }),
  },
];

export const nuisanceAt = (cause: Cause, z: number): Nuisance => ({ ...NOMINAL, ...cause.shift(z) });
