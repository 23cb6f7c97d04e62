import {
  CLEAR,
  type Floor,
  GRID_SIZE,
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

/** What is worked out of a state of the world at a depth, and remembered by this. */
export interface AtDepth<T> {
  /** Never there: it says what is remembered. */
  readonly remembers?: T;
}

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
  /** What light does at a depth, worked out once. */
  remembered<T>(what: AtDepth<T>, depth_m: number, workOut: () => T): T;
}

function waterUnder({ daylight, water }: Conditions, nuisance: Nuisance): WaterState {
  const { kdRemainderScale, referenceMu0 } = nuisance;
  const scatteringScale = water.scatteringScale * nuisance.scatteringScale;
  const spread = { kdRemainderScale, scatteringScale, coastalShare: water.coastalShare, referenceMu0 };
  return water.states.under(spread, daylight?.below.mu0 ?? EVEN_MU0);
}

/** Of what is not known exactly, all that bears on light. The rest is the camera's and its filter's. */
const LIGHT_NUISANCES = [
  "kdRemainderScale",
  "scatteringScale",
  "scatterLost",
  "daylightScale",
  "overheadScale",
  "referenceMu0",
  "facing",
  "uprightScale",
  "floorScale",
  "lampIntensityScale",
  "lampAim",
  "lampOffsetScale",
] as const satisfies readonly (keyof Nuisance)[];

export function underwater(conditions: Conditions, nuisance: Nuisance): Underwater {
  checkpoint();
  // Kept with the water: a weak map would be gone through at every collection of garbage.
  const known = conditions.water.lights as Light[];
  let light = known.find((one) => one.isOf(conditions, nuisance));
  if (light === undefined) {
    light = new Light(conditions, nuisance);
    known.push(light);
  }
  // The same light, met by another camera.
  return Object.create(light, { nuisance: { value: nuisance } });
}

const ANYWHERE = 0;
const DAYLIGHT: AtDepth<Daylight | undefined> = {};
const PATH: AtDepth<Spectrum> = {};

/** A state of the world. What a decision does not ask for is not worked out, and nothing that is of its light is worked out twice. */
class Light implements Underwater {
  readonly scene: Scene;
  readonly sun: Sun | undefined;
  readonly floor: Floor | undefined;
  private readonly state: WaterState;
  private readonly known = new Map<AtDepth<unknown>, Map<number, unknown>>();

  constructor(
    private readonly conditions: Conditions,
    readonly nuisance: Nuisance,
  ) {
    this.scene = conditions.scene;
    this.sun = conditions.sun;
    this.floor = conditions.floor;
    this.state = waterUnder(conditions, nuisance);
  }

  isOf({ scene, sun, daylight, floor }: Conditions, nuisance: Nuisance): boolean {
    return (
      this.scene === scene &&
      this.sun === sun &&
      this.conditions.daylight === daylight &&
      this.floor === floor &&
      LIGHT_NUISANCES.every((name) => this.nuisance[name] === nuisance[name])
    );
  }

  get kd_per_m(): Spectrum {
    return this.state.kd_per_m;
  }

  get water(): WaterOptics {
    return this.state.water;
  }

  get daylight(): Daylight | undefined {
    const { daylight } = this.conditions;
    return this.remembered(
      DAYLIGHT,
      ANYWHERE,
      () => daylight && scaledDaylight(daylight, this.nuisance.daylightScale, this.nuisance.overheadScale),
    );
  }

  get path_per_m(): Spectrum {
    return this.remembered(PATH, ANYWHERE, () => pathAttenuation(this.water, this.nuisance.scatterLost));
  }

  remembered<T>(what: AtDepth<T>, depth_m: number, workOut: () => T): T {
    let values = this.known.get(what) as Map<number, T> | undefined;
    if (values === undefined) {
      values = new Map();
      this.known.set(what, values);
    }
    const known = values.get(depth_m);
    if (known !== undefined) return known;
    checkpoint();
    const value = workOut();
    values.set(depth_m, value);
    return value;
  }
}

const DOWNWELLING: AtDepth<Spectrum> = {};

export const DARK: Spectrum = new Float64Array(GRID_SIZE);

/** Downwelling daylight at a depth, W m^-2 nm^-1; dark without daylight. */
export function downwellingAt(world: Underwater, depth_m: number): Spectrum {
  const surface = world.daylight?.below.downwelling;
  if (!surface) return DARK;
  return world.remembered(DOWNWELLING, depth_m, () =>
    multiply(pathTransmittance(world.kd_per_m, depth_m), surface),
  );
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
