/** The water that the cards of a dive saw, by the fit of `card_samples`. */
import { type CardFit, CLEAR, type Rgb } from "@sunfathom/optics";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import { type Conditions, conditionsOf } from "../../light/conditions.js";
import { downwellingAt, underwater } from "../../light/underwater.js";
import { itemAt } from "../../lists/non-empty.js";
import type { CardSample, Scene } from "../../scene/scene.js";
import { type Cause, causesOf } from "../../uncertainty/causes.js";
import { Z90 } from "../../uncertainty/normal.js";
import { NOMINAL, type Nuisance } from "../../uncertainty/nuisance.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import type { Hours } from "../light-here.js";
import { topLux } from "../light-here.js";
import type { CardFrame } from "../plan.js";
import { type Told, toldBy } from "./told-by-misfit.js";

/** A scene without any word on its water and on its filter. */
function withoutWater({
  water_type: _,
  chlorophyll_mg_m3: __,
  secchi_depth_m: ___,
  visibility_m: ____,
  water_hue: _____,
  kd_samples: ______,
  card_samples: _______,
  transfer_curve: ________,
  locked_exposure: _________,
  locked_balance: __________,
  filter_kind: ___________,
  filter_density: ____________,
  filter_transmittance: _____________,
  ...scene
}: Scene): Scene {
  return scene;
}

/**
 * A frame as a sample of a card. As the sun moves in the course of a dive, what falls on the water changes: it is taken out as if the
 * exposure had been by so much another.
 */
export function sampleOf(frame: CardFrame, hours: Hours): CardSample {
  const { depth_m, red, green, blue, shutter_s, f_number, red_gain, green_gain, blue_gain, time_s } = frame;
  const daylight =
    time_s === undefined || !hours.sunMoves || hours.start.daylight === undefined
      ? 1
      : topLux(hours.at(time_s)) / topLux(hours.start);
  const iso = frame.iso * daylight;
  return { depth_m, red, green, blue, iso, shutter_s, f_number, red_gain, green_gain, blue_gain };
}

/** ln of the light of each channel, in the order of frames. */
export function lnLightOf(samples: readonly CardSample[]): number[] {
  return samples.flatMap(({ red, green, blue, iso = 1, shutter_s = 1, f_number = 1, ...gains }) => {
    const seen = (iso * shutter_s) / f_number ** 2;
    const { red_gain = 1, green_gain = 1, blue_gain = 1 } = gains;
    return [red / red_gain, green / green_gain, blue / blue_gain].map((value) => Math.log(value / seen));
  });
}

export interface FittedWater {
  /** Of the water that the cards saw, in the state of the world that they make likely. */
  conditions: Conditions;
  fit: CardFit;
  /** That state: the mean camera and what else is usual, but for what the misfit of the cards tells. */
  likely: Nuisance;
  /** Other states, each pair at the 10th and the 90th percentile of something that has nothing to do with the other pairs. */
  others: (readonly [minus: Nuisance, plus: Nuisance])[];
  /** ln of what a card shows over the light that comes down, channel by channel, depth by depth. */
  overDownwelling: (depths_m: readonly number[]) => number[];
  /** By how much cards show something else in another state than the likely one, in ln, and how the fit would move with that. */
  movedIn: (nuisance: Nuisance, depths_m: readonly number[]) => MovedFit;
}

interface MovedFit {
  /** What cards at the depths asked for show, and what the fit makes of it. */
  shown: number[];
  fitted: number[];
  channel_kd: Rgb;
}

/**
 * What a card that faces the camera shows over the light that comes down: it changes with depth, as light from the side does, and the
 * fit knows of none. It knows the mean camera alone, too. In ln, channel by channel, depth by depth.
 */
function cardOverDownwelling(
  conditions: Conditions,
  depths_m: readonly number[],
  likely: Nuisance,
): number[] {
  const world = underwater(conditions, NOMINAL);
  const profile = sensorProfile(sensorOf(conditions.scene, NOMINAL));
  const shown = cardsIn(conditions, depths_m, likely);
  return depths_m.flatMap((depth_m, n) =>
    rawOf(profile, downwellingAt(world, depth_m)).map((down, k) => itemAt(shown, 3 * n + k) - Math.log(down)),
  );
}

/** ln of the light of a card, channel by channel, depth by depth. */
function cardsIn(conditions: Conditions, depths_m: readonly number[], nuisance: Nuisance): number[] {
  const world = underwater(conditions, nuisance);
  const profile = sensorProfile(sensorOf(conditions.scene, nuisance));
  return depths_m.flatMap((depth_m) => rawOf(profile, cardLight(world, CLEAR, depth_m)).map(Math.log));
}

/** What scatters is in the fit's own errors; how bright the sky is moves all cards alike. */
const NOT_OF_THE_FIT: readonly string[] = ["card_noise", "daylight_level"];

const causesOfFit = (conditions: Conditions): Cause[] =>
  causesOf(conditions).filter(({ code }) => !NOT_OF_THE_FIT.includes(code));

/** All causes at once, each at its own deviate: each moves something of its own. */
const stateOf = (causes: readonly Cause[], deviates: readonly number[]): Nuisance =>
  Object.assign({ ...NOMINAL }, ...causes.map((cause, i) => cause.shift(itemAt(deviates, i))));

/** Rounds of fitting the water and of working out what a card in it shows, and what the misfit tells. */
const ROUNDS = 4;

/**
 * @param site conditions of the site as it was described: a first guess
 * @throws SceneProblem of `card_samples` where no water fits the cards that were filmed without the filter
 */
export function fittedWater(site: Conditions, samples: readonly CardSample[]): FittedWater {
  const depths = samples.map(({ depth_m }) => depth_m);
  const fitIn = (assumed: Conditions, likely: Nuisance): Conditions => {
    const over = site.daylight ? cardOverDownwelling(assumed, depths, likely) : [];
    return conditionsOf({
      ...withoutWater(site.scene),
      card_samples: samples.map((sample, n) => asDownwelling(sample, over.slice(3 * n, 3 * n + 3))),
      transfer_curve: "linear",
    });
  };
  let conditions = fitIn(site, NOMINAL);
  const causes = causesOfFit(conditions);
  let told: Told = {
    likely: causes.map(() => 0),
    moves: causes.map((_, j) => causes.map((__, i) => (i === j ? 1 : 0))),
  };
  // Without daylight no card shows water from above.
  for (let round = 0; round < (site.daylight ? ROUNDS : 0); round++) {
    conditions = fitIn(conditions, stateOf(causes, told.likely));
    told = toldByCards(conditions, depths, causes, told.likely);
  }
  const fit = fitOf(conditions);
  const likely = stateOf(causes, told.likely);
  const apart = (asked_m: readonly number[], nuisance: Nuisance): number[] => {
    const here = cardsIn(conditions, asked_m, likely);
    return cardsIn(conditions, asked_m, nuisance).map((ln, i) => ln - itemAt(here, i));
  };
  const movedBy = (move: readonly number[], z: number): Nuisance =>
    stateOf(
      causes,
      told.likely.map((own, i) => own + z * itemAt(move, i)),
    );
  return {
    conditions,
    fit,
    likely,
    others: told.moves.map((move) => [movedBy(move, -Z90), movedBy(move, Z90)]),
    overDownwelling: (asked_m) => cardOverDownwelling(conditions, asked_m, likely),
    movedIn: (nuisance, asked_m) => {
      const { channel_kd, ln } = fit.movedBy(apart(depths, nuisance), asked_m);
      return { shown: apart(asked_m, nuisance), fitted: ln, channel_kd };
    },
  };
}

function fitOf({ water: { cardFit } }: Conditions): CardFit {
  if (cardFit === undefined) throw new RangeError("a water of cards has its fit");
  return cardFit;
}

/** What the misfit of the cards tells, about the deviates that they were fitted with. */
function toldByCards(
  conditions: Conditions,
  depths_m: readonly number[],
  causes: readonly Cause[],
  assumed: readonly number[],
): Told {
  const fit = fitOf(conditions);
  const unexplained = causes.map((_, moved) => {
    const at = (z: number) =>
      cardsIn(
        conditions,
        depths_m,
        stateOf(
          causes,
          assumed.map((own, i) => (i === moved ? own + z : own)),
        ),
      );
    const [minus, plus] = [at(-Z90), at(Z90)];
    const shown = plus.map((ln, i) => (ln - itemAt(minus, i)) / (2 * Z90));
    const { ln } = fit.movedBy(shown, depths_m);
    return shown.map((value, i) => (value - itemAt(ln, i)) / fit.noise_ln);
  });
  const misfit = fit.residuals_ln.flat().map((ln) => ln / fit.noise_ln);
  return toldBy(misfit, unexplained, fit.weights, assumed);
}

/** The same picture of a card that the light coming down would have fallen on: as if the balance had been by so much another. */
function asDownwelling(sample: CardSample, [red = 0, green = 0, blue = 0]: readonly number[]): CardSample {
  const { red_gain = 1, green_gain = 1, blue_gain = 1 } = sample;
  return {
    ...sample,
    red_gain: red_gain * Math.exp(red),
    green_gain: green_gain * Math.exp(green),
    blue_gain: blue_gain * Math.exp(blue),
  };
}
