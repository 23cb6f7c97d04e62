import {
  emptyWater,
  kdUnderSun,
  type Spectrum,
  type WaterOptics,
  type WaterSpread,
  waterFromKd,
} from "@sunfathom/optics";

/** A water that nobody keeps. */
const passing = emptyWater();

/** A water under one setting of what is not known of it. Most decisions ask for its diffuse attenuation alone. */
export class WaterState {
  readonly kd_per_m: Spectrum;
  #water: WaterOptics | undefined;

  constructor(
    private readonly kd_reference_per_m: Spectrum,
    readonly spread: Required<WaterSpread>,
    readonly mu0: number,
  ) {
    this.kd_per_m = kdUnderSun(waterFromKd(kd_reference_per_m, spread, passing), mu0, spread.referenceMu0);
  }

  get water(): WaterOptics {
    this.#water ??= waterFromKd(this.kd_reference_per_m, this.spread);
    return this.#water;
  }
}

/**
 * The states of one described water that have been worked out: most of what is not known leaves the water as it is. Kept
 * with the water itself, since a weak map from each request's own would be gone through at every collection of garbage.
 */
export class WaterStates {
  /** A few, so that looking through them costs less than a key made of their numbers. */
  readonly #known: WaterState[] = [];

  constructor(private readonly kd_reference_per_m: Spectrum) {}

  /** @param mu0 path cosine of light just below the surface, 0 to 1 */
  under(asked: Required<WaterSpread>, mu0: number): WaterState {
    for (const state of this.#known) {
      const { spread } = state;
      if (
        spread.kdRemainderScale === asked.kdRemainderScale &&
        spread.scatteringScale === asked.scatteringScale &&
        spread.coastalShare === asked.coastalShare &&
        spread.referenceMu0 === asked.referenceMu0 &&
        state.mu0 === mu0
      )
        return state;
    }
    const state = new WaterState(this.kd_reference_per_m, { ...asked }, mu0);
    this.#known.push(state);
    return state;
  }
}
