/** The water that the cards of a dive saw, by the fit of `card_samples`. */
import { type CardFit, CLEAR } from "@sunfathom/optics";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import { type Conditions, conditionsOf } from "../../light/conditions.js";
import { downwellingAt, underwater } from "../../light/underwater.js";
import type { CardSample, Scene } from "../../scene/scene.js";
import { type Cause, causesOf } from "../../uncertainty/causes.js";
import { NOMINAL, type Nuisance } from "../../uncertainty/nuisance.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import type { Hours } from "../light-here.js";
import { topLux } from "../light-here.js";
import type { CardFrame } from "../plan.js";

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

type Channel = "red" | "green" | "blue";

export interface FittedWater {
  conditions: Conditions;
  fit: CardFit;
  /** ln of what a card shows over the light that comes down, channel by channel, depth by depth. */
  overDownwelling: (depths_m: readonly number[]) => number[];
  /** What is not known beside the scatter of the readings, and bears on what the fit makes of them. */
  causes: Cause[];
  /** By how much cards show something else in another state of the world, in ln, and how the fit would move with that. */
  movedIn: (nuisance: Nuisance, depths_m: readonly number[]) => MovedFit;
}

interface MovedFit {
  /** What cards at the depths asked for show, and what the fit makes of it. */
  shown: number[];
  fitted: number[];
  channel_kd: Record<Channel, number>;
}

/**
 * What a card that faces the camera shows over the light that comes down: it changes with depth, as light from the side does, and the
 * fit knows of none. In ln, channel by channel, depth by depth.
 */
function cardOverDownwelling(conditions: Conditions, depths_m: readonly number[]): number[] {
  const world = underwater(conditions, NOMINAL);
  const profile = sensorProfile(sensorOf(conditions.scene, NOMINAL));
  const shown = cardsIn(conditions, depths_m, NOMINAL);
  return depths_m.flatMap((depth_m, n) =>
    rawOf(profile, downwellingAt(world, depth_m)).map((down, k) => (shown[3 * n + k] ?? 0) - Math.log(down)),
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

/** Rounds of fitting the water and of working out what a card in it shows. */
const ROUNDS = 2;

/**
 * @param site conditions of the site as it was described: a first guess
 * @throws SceneProblem of `card_samples` where no water fits the cards that were filmed without the filter
 */
export function fittedWater(site: Conditions, samples: readonly CardSample[]): FittedWater {
  const depths = samples.map(({ depth_m }) => depth_m);
  let conditions = site;
  for (let round = 0; round < ROUNDS; round++) {
    const over = site.daylight ? cardOverDownwelling(conditions, depths) : [];
    conditions = conditionsOf({
      ...withoutWater(site.scene),
      card_samples: samples.map((sample, n) => asDownwelling(sample, over.slice(3 * n, 3 * n + 3))),
      transfer_curve: "linear",
    });
  }
  const { cardFit: fit } = conditions.water;
  if (fit === undefined) throw new RangeError("a water of cards has its fit");
  const apart = (asked_m: readonly number[], nuisance: Nuisance): number[] => {
    const nominal = cardsIn(conditions, asked_m, NOMINAL);
    return cardsIn(conditions, asked_m, nuisance).map((ln, i) => ln - (nominal[i] ?? ln));
  };
  return {
    conditions,
    fit,
    overDownwelling: (asked_m) => cardOverDownwelling(conditions, asked_m),
    causes: causesOf(conditions).filter(({ code }) => !NOT_OF_THE_FIT.includes(code)),
    movedIn: (nuisance, asked_m) => {
      const { channel_kd, ln } = fit.movedBy(apart(depths, nuisance), asked_m);
      const [red, green, blue] = channel_kd;
      return { shown: apart(asked_m, nuisance), fitted: ln, channel_kd: { red, green, blue } };
    },
  };
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
