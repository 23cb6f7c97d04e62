import { combinedSigma, type UprightSpread, type WaterSigma } from "@sunfathom/optics";
import type { Conditions } from "../light/conditions.js";
import { underwater, uprightSpreadAt } from "../light/underwater.js";
import { CAUSES_EN, WATER_CAUSES_EN } from "../messages/causes-en.js";
import { Z90 } from "./normal.js";
import { NOMINAL, type Nuisance } from "./nuisance.js";

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
  ...WATER_CAUSES_EN[cause],
  shift: (z) => ({ kdRemainderScale: Math.exp(sigma_ln * z) }),
});

function scatteringCause({ water }: Conditions): Cause {
  const seen = water.beam_attenuation_530;
  const sigma = seen ? seen.sigma_ln : combinedSigma(water.scattering_sigmas);
  return {
    id: "water_scattering",
    ...(seen ? CAUSES_EN.scattering_as_seen : CAUSES_EN.scattering),
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
      ...CAUSES_EN.path_scattering,
      shift: (z) => ({ scatterLost: Math.min(1, 0.5 * 2 ** (0.8 * z)) }),
    },
    {
      id: "sensor",
      ...CAUSES_EN.sensor,
      shift: (z) => ({ crosstalkSd: z }),
    },
  ];
  if (daylight) {
    const sigma = daylightSigma(scene.cloud_oktas);
    const middle_m = (scene.min_depth_m + scene.max_depth_m) / 2;
    let known: UprightSpread | undefined;
    // Only where it is asked for: not every decision has a subject.
    const upright = (): UprightSpread => {
      known ??= uprightSpreadAt(underwater(conditions, NOMINAL), middle_m);
      return known;
    };
    causes.push(
      {
        id: "daylight_level",
        ...CAUSES_EN.daylight_level,
        shift: (z) => ({ daylightScale: 2 ** (sigma * z) }),
      },
      {
        id: "upright_share",
        ...CAUSES_EN.upright_share,
        shift: (z) => ({ uprightScale: Math.exp((z / Z90) * (z > 0 ? upright().up : upright().down)) }),
      },
    );
  }
  if (scene.lamps.length > 0) {
    causes.push({
      id: "lamp_beam",
      ...CAUSES_EN.lamp_beam,
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
    ...CAUSES_EN.filter_edge,
    shift: (z) => ({ filterShape: { shift_nm: 8 * z } }),
  },
  {
    id: "filter_width",
    ...CAUSES_EN.filter_width,
    shift: (z) => ({ filterShape: { widthScale: Math.exp(0.25 * z) } }),
  },
  {
    id: "full_well",
    ...CAUSES_EN.full_well,
    shift: (z) => ({ fullWellScale: 2 ** (0.8 * z) }),
  },
];

/** Causes that bear on haze lit by lamps alone. */
export const LIT_HAZE_CAUSES: Cause[] = [
  {
    id: "lamp_offset",
    ...CAUSES_EN.lamp_offset,
    shift: (z) => ({ lampOffsetScale: 2 ** (0.6 * z) }),
  },
];

export const nuisanceAt = (cause: Cause, z: number): Nuisance => ({ ...NOMINAL, ...cause.shift(z) });
