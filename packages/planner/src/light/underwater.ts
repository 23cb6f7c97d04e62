import {
  CLEAR,
  type Floor,
  GRID_SIZE,
  type LightAtDepth,
  multiply,
  pathAttenuation,
  pathTransmittance,
  portTransmittance,
  type Spectrum,
  type WaterOptics,
} from "@sunfathom/optics";
import { checkpoint } from "../checkpoint.js";
import type { Scene } from "../scene/scene.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { type Daylight, scaledDaylight } from "./daylight.js";
import { aimAt } from "./lamp-aim.js";
import { lampsIrradiance } from "./lamps.js";
import type { Sun } from "./sun.js";
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
  /** Undefined without daylight. */
  readonly sun: Sun | undefined;
  /** Undefined over deep water. */
  readonly floor: Floor | undefined;
  readonly nuisance: Nuisance;
  /** How daylight is spread at a depth, worked out once. */
  remembered(depth_m: number, workOut: () => LightAtDepth): LightAtDepth;
}

function waterUnder({ daylight, water }: Conditions, nuisance: Nuisance): WaterState {
  const { kdRemainderScale, referenceMu0 } = nuisance;
  const scatteringScale = water.scatteringScale * nuisance.scatteringScale;
  const spread = { kdRemainderScale, scatteringScale, coastalShare: water.coastalShare, referenceMu0 };
  return water.states.under(spread, daylight?.below.mu0 ?? EVEN_MU0);
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
  readonly #lights = new Map<number, LightAtDepth>();

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

  get sun(): Sun | undefined {
    return this.conditions.sun;
  }

  get floor(): Floor | undefined {
    return this.conditions.floor;
  }

  remembered(depth_m: number, workOut: () => LightAtDepth): LightAtDepth {
    const known = this.#lights.get(depth_m);
    if (known !== undefined) return known;
    checkpoint();
    const light = workOut();
    this.#lights.set(depth_m, light);
    return light;
  }

  get daylight(): Daylight | undefined {
    const { daylight } = this.conditions;
    this.#daylight ??=
      daylight && scaledDaylight(daylight, this.nuisance.daylightScale, this.nuisance.overheadScale);
    return this.#daylight;
  }

  get path_per_m(): Spectrum {
    this.#path_per_m ??= pathAttenuation(this.water, this.nuisance.scatterLost);
    return this.#path_per_m;
  }
}

export const DARK: Spectrum = new Float64Array(GRID_SIZE);

/** Downwelling daylight at a depth, W m^-2 nm^-1; dark without daylight. */
export function downwellingAt(world: Underwater, depth_m: number): Spectrum {
  const surface = world.daylight?.below.downwelling;
  if (!surface) return DARK;
  return multiply(pathTransmittance(world.kd_per_m, depth_m), surface);
}

/** Lamp light on the subject, W m^-2 nm^-1; dark without lamps. */
export function lampLightAt(
  world: Underwater,
  changes: { filter?: Spectrum; distance_m?: number } = {},
): Spectrum {
  checkpoint();
  if (world.scene.lamps.length === 0) return DARK;
  return lampsIrradiance(world.scene.lamps, {
    aim: aimAt(world.scene, world.nuisance),
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
