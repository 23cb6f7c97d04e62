import {
  CLEAR,
  GRID_SIZE,
  multiply,
  pathAttenuation,
  pathTransmittance,
  portTransmittance,
  type Spectrum,
  scale,
  type UprightSpread,
  uprightFraction,
  uprightSpreadLn,
  type WaterOptics,
} from "@sunfathom/optics";
import { checkpoint } from "../checkpoint.js";
import type { Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { type Daylight, scaledDaylight } from "./daylight.js";
import { lampsIrradiance } from "./lamps.js";
import type { WaterState } from "./water-states.js";

/** Path cosine of light without a sun to give it a direction: an even field, as under a cloudy sky. */
const EVEN_MU0 = 0.85;

/** One state of the world: the scene's water and light under one setting of what is not known exactly. */
export interface Underwater {
  readonly water: WaterOptics;
  readonly daylight: Daylight | undefined;
  /** Diffuse attenuation under this sun, 1/m. */
  readonly kd_per_m: Spectrum;
  /** Attenuation on short paths, 1/m. */
  readonly path_per_m: Spectrum;
  readonly scene: Scene;
  readonly nuisance: Nuisance;
}

function waterUnder({ daylight, water }: Conditions, nuisance: Nuisance): WaterState {
  const { kdRemainderScale } = nuisance;
  const scatteringScale = water.scatteringScale * nuisance.scatteringScale;
  return water.states.under({ kdRemainderScale, scatteringScale }, daylight?.below.mu0 ?? EVEN_MU0);
}

export function underwater(conditions: Conditions, nuisance: Nuisance): Underwater {
  checkpoint();
  return new WorldState(conditions, nuisance, waterUnder(conditions, nuisance));
}

/** What a decision does not ask for is not worked out. */
class WorldState implements Underwater {
  readonly scene: Scene;
  readonly kd_per_m: Spectrum;
  #daylight: Daylight | undefined;
  #path_per_m: Spectrum | undefined;

  constructor(
    private readonly conditions: Conditions,
    readonly nuisance: Nuisance,
    private readonly state: WaterState,
  ) {
    this.scene = conditions.scene;
    this.kd_per_m = state.kd_per_m;
  }

  get water(): WaterOptics {
    return this.state.water;
  }

  get daylight(): Daylight | undefined {
    const { daylight } = this.conditions;
    this.#daylight ??= daylight && scaledDaylight(daylight, this.nuisance.daylightScale);
    return this.#daylight;
  }

  get path_per_m(): Spectrum {
    this.#path_per_m ??= pathAttenuation(this.water, this.nuisance.scatterLost);
    return this.#path_per_m;
  }
}

const DARK: Spectrum = new Float64Array(GRID_SIZE);

/** Downwelling daylight at a depth, W m^-2 nm^-1; dark without daylight. */
export function downwellingAt(world: Underwater, depth_m: number): Spectrum {
  const surface = world.daylight?.below.downwelling;
  if (!surface) return DARK;
  return multiply(pathTransmittance(world.kd_per_m, depth_m), surface);
}

const uprightGeometry = (world: Underwater, { below }: Daylight, depth_m: number) => ({
  sunAngleInWater_deg: below.sunAngleInWater_deg,
  directShare: below.directShare,
  depth_m,
  subjectFacing: world.scene.subject_facing,
});

/** Spread of the share of daylight that the subject gets; none without daylight. */
export function uprightSpreadAt(world: Underwater, depth_m: number): UprightSpread {
  if (!world.daylight) return { up: 0, down: 0 };
  const { absorption_per_m, scattering_per_m } = world.water;
  const geometry = uprightGeometry(world, world.daylight, depth_m);
  return uprightSpreadLn(geometry, absorption_per_m, scattering_per_m, world.kd_per_m);
}

/** Daylight on the subject as it faces, W m^-2 nm^-1; dark without daylight. */
export function uprightDaylightAt(world: Underwater, depth_m: number): Spectrum {
  checkpoint();
  if (!world.daylight) return DARK;
  const { absorption_per_m, scattering_per_m } = world.water;
  const geometry = uprightGeometry(world, world.daylight, depth_m);
  const fraction = uprightFraction(geometry, absorption_per_m, scattering_per_m, world.kd_per_m);
  return scale(multiply(downwellingAt(world, depth_m), fraction), world.nuisance.uprightScale);
}

/** Lamp light on the subject, W m^-2 nm^-1; dark without lamps. */
export function lampLightAt(
  world: Underwater,
  changes: { filter?: Spectrum; distance_m?: number } = {},
): Spectrum {
  checkpoint();
  return lampsIrradiance(world.scene.lamps, {
    intensityScale: world.nuisance.lampIntensityScale,
    attenuation_per_m: world.path_per_m,
    ...changes,
  });
}

/** What the water between subject and camera lets through, 0 to 1. */
export function towardsCamera(world: Underwater): Spectrum {
  return pathTransmittance(world.path_per_m, world.scene.subject_distance_m);
}

/** What the port lets through of the radiance that reaches it, 0 to 1. */
export const PORT = portTransmittance();

/** Change for `lampLightAt`: the lamps without their filters. */
export const CLEAR_LAMPS = { filter: CLEAR };
