/** Dives whose truth is known: drawn from all that the model does not know, with cards as a camera would have filmed them. Tests only. */

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance } from "@sunfathom/optics";
import { balanceReach, balanceToCard } from "../../camera/balance-reach.js";
import { GREY_CARD } from "../../camera/card-level.js";
import { shareOfFullScale } from "../../camera/recording.js";
import { sensorOf } from "../../camera/sensor.js";
import { rawOf, sensorProfile } from "../../camera/sensor-profile.js";
import { budgetAt } from "../../exposure-loss/budget.js";
import { conditionsOf } from "../../light/conditions.js";
import { PORT, underwater } from "../../light/underwater.js";
import type { Scene } from "../../scene/scene.js";
import { type Cause, causesOf, FILTER_CAUSES } from "../../uncertainty/causes.js";
import { NOMINAL, type Nuisance } from "../../uncertainty/nuisance.js";
import { cardLight } from "../../white-balance/avoidable-cast.js";
import type { CardFrame } from "../plan.js";
import { CAMERA_SCALE_SIGMA_STOPS } from "./exposure-marks.js";
import { channelKd } from "./water-marks.js";

/** Of ln of a reading: what the fit of cards expects. */
const NOISE_LN = 0.025;

export interface Truth {
  scene: Scene;
  frames: CardFrame[];
  /** By the name of the mark, in the order of its frames: what is right. */
  values: Record<string, number[]>;
}

/** Standard normal deviates, the same for each seed (Box & Muller 1958, on splitmix32). */
function normalFrom(seed: number): () => number {
  let state = seed >>> 0;
  const draw = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (((mixed ^ (mixed >>> 15)) >>> 0) + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(draw())) * Math.cos(2 * Math.PI * draw());
}

/** All causes at once, each at a deviate of its own: factors of one thing multiply. */
function drawnFrom(causes: readonly Cause[], normal: () => number): Nuisance {
  const drawn: Nuisance = { ...NOMINAL, filterShape: {} };
  for (const cause of causes) {
    const shift = cause.shift(normal());
    for (const [name, value] of Object.entries(shift)) {
      if (name === "filterShape") drawn.filterShape = { ...drawn.filterShape, ...(value as object) };
      else {
        const key = name as Exclude<keyof Nuisance, "filterShape">;
        const nominal = NOMINAL[key];
        drawn[key] = nominal === 0 ? drawn[key] + Number(value) : (drawn[key] * Number(value)) / nominal;
      }
    }
  }
  return drawn;
}

const SITES: readonly Scene[] = [
  withSight(daylightScene("II", 50, 4, 16), 18, "blue"),
  withSight(daylightScene("II", 60, 4, 14), 12, "blue_green"),
  withSight(daylightScene("II", 40, 3, 10), 8, "green"),
];
const DENSITIES = [0.6, 0.9, 1.2];

function withSight(
  { water_type: _, ...scene }: Scene,
  visibility_m: number,
  water_hue: NonNullable<Scene["water_hue"]>,
): Scene {
  return { ...scene, visibility_m, water_hue };
}

/** One dive at one of three sites, with five cards bare and two through a red filter. */
export function truthOf(seed: number): Truth {
  const normal = normalFrom(Math.imul(seed + 1, 0x85ebca6b));
  const site = SITES[seed % SITES.length] as Scene;
  const density = DENSITIES[Math.floor(seed / SITES.length) % DENSITIES.length] as number;
  const scene: Scene = { ...site, filter_kind: "red", filter_density: density };
  const conditions = conditionsOf(site);
  const causes = [...causesOf(conditions), ...FILTER_CAUSES.filter(({ code }) => code !== "full_well")];
  const nuisance = drawnFrom(causes, normal);
  const world = underwater(conditions, nuisance);
  const profile = sensorProfile(sensorOf(site, nuisance));
  const reach = balanceReach(site, profile);
  const filter = filterTransmittance("red", density, nuisance.filterShape);
  const scale = 2 ** (CAMERA_SCALE_SIGMA_STOPS * normal());
  const { min_depth_m, max_depth_m } = site;
  const at = (share: number) => min_depth_m + share * (max_depth_m - min_depth_m);
  const places = [
    ...[0, 0.25, 0.5, 0.75, 1].map((share) => ({ depth_m: at(share), through_filter: false })),
    ...[0.3, 0.7].map((share) => ({ depth_m: at(share), through_filter: true })),
  ];
  const evs: number[] = [];
  const shorts: number[] = [];
  const frames = places.map(({ depth_m, through_filter }): CardFrame => {
    const behind = through_filter ? filter : CLEAR;
    const raw = rawOf(profile, cardLight(world, behind, depth_m));
    const { gains, residual_stops } = balanceToCard(reach, raw);
    shorts.push(residual_stops);
    evs.push(budgetAt(world, behind, depth_m).cardEv100);
    const settings = { shutter_s: 1 / 50, f_number: 5.6 };
    const shares = raw.map(
      (value, k) =>
        scale * (gains[k] ?? 1) * shareOfFullScale(GREY_CARD * PORT * value, { iso: 100, ...settings }),
    );
    // Exposed so that the brightest channel stands a little above grey.
    const iso = (100 * 0.25) / Math.max(...shares);
    const [red, green, blue] = shares.map((share) => (share * iso * Math.exp(NOISE_LN * normal())) / 100) as [
      number,
      number,
      number,
    ];
    const [red_gain, green_gain, blue_gain] = gains;
    return {
      depth_m,
      red,
      green,
      blue,
      iso,
      ...settings,
      red_gain,
      green_gain,
      blue_gain,
      through_filter,
      balanced: true,
    };
  });
  const kd = channelKd(conditions, nuisance, { from_m: at(0), to_m: at(1) });
  return {
    scene,
    frames,
    values: {
      exposure: evs,
      red_attenuation: [kd.red],
      green_attenuation: [kd.green],
      blue_attenuation: [kd.blue],
      filter_density: [density],
      balance_reach: shorts,
    },
  };
}
