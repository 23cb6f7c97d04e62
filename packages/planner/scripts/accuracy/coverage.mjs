// The percentiles of the planner against a seeded simulation in which every cause of doubt varies at once.
import { CLEAR } from "@sunfathom/optics";
import { sensorOf } from "#model/camera/sensor";
import { rawOf, sensorProfile } from "#model/camera/sensor-profile";
import { budgetAt } from "#model/exposure-loss/budget";
import { conditionsOf } from "#model/light/conditions";
import { cardDaylightAt } from "#model/light/daylight-at-depth";
import { lampLightAt, underwater } from "#model/light/underwater";
import { causesOf } from "#model/uncertainty/causes";
import { NOMINAL } from "#model/uncertainty/nuisance";
import { propagate } from "#model/uncertainty/propagate";
import { median } from "../../../optics/scripts/accuracy/numbers.mjs";
import { normalFrom } from "../../../optics/scripts/accuracy/random.mjs";
import { SCENES } from "./scenes.mjs";

export const DRAWS = 600;
const SEED = 1964;
export const QUANTITIES = [
  { name: "loss to the water above (stops)", short: "water" },
  { name: "loss in all (stops)", short: "all" },
  { name: "exposure value at ISO 100", short: "EV" },
  { name: "video light over daylight, red (stops)", short: "red" },
  { name: "video light over daylight, green (stops)", short: "green" },
  { name: "video light over daylight, blue (stops)", short: "blue" },
];

function evaluationOf(scene, depth_m) {
  const conditions = conditionsOf(scene);
  const of = (nuisance) => {
    const world = underwater(conditions, nuisance);
    const { depth, total, ev100 } = budgetAt(world, CLEAR, depth_m);
    const profile = sensorProfile(sensorOf({}, { crosstalkSd: nuisance.crosstalkSd }));
    const lamps = rawOf(profile, lampLightAt(world));
    const daylight = rawOf(profile, cardDaylightAt(world, depth_m));
    return [depth, total, ev100, ...lamps.map((v, k) => Math.log2(v / daylight[k]))];
  };
  return { of, causes: causesOf(conditions) };
}

/**
 * One setting of all causes at once. Several causes may act on the same factor (a water's attenuation by its type and by
 * its hue): their factors multiply.
 */
function draw(causes, normal) {
  const all = { ...NOMINAL };
  for (const cause of causes) {
    for (const [key, value] of Object.entries(cause.shift(normal()))) {
      const isFactor = key.endsWith("Scale");
      all[key] = isFactor ? all[key] * value : value;
    }
  }
  return all;
}

const quantile = (sorted, share) => {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  return sorted[low] + (at - low) * (sorted[Math.min(low + 1, sorted.length - 1)] - sorted[low]);
};

/** Per scene and quantity: the model's percentiles, the simulated ones, and how many draws fall between low and high. */
export function coverage() {
  return SCENES.map(({ name, scene, depth_m }, n) => {
    const { of, causes } = evaluationOf(scene, depth_m);
    const { estimates } = propagate(of, causes);
    const normal = normalFrom(SEED + n);
    const draws = Array.from({ length: DRAWS }, () => of(draw(causes, normal)));
    const quantities = estimates.map(({ low, likely, high }, k) => {
      const values = draws.map((d) => d[k]).sort((a, b) => a - b);
      const share = (holds) => values.filter(holds).length / DRAWS;
      return {
        low: low - likely,
        high: high - likely,
        width: high - low,
        below: share((v) => v < low),
        above: share((v) => v > high),
        simulated: [0.1, 0.5, 0.9].map((p) => quantile(values, p) - likely),
      };
    });
    return { name, quantities };
  });
}

export const heldOf = ({ below, above }) => 1 - below - above;
/** Mean over scenes of one quantity's share of draws held, and its median width. */
export const summary = (scenes, k) => ({
  held: scenes.map(({ quantities }) => heldOf(quantities[k])),
  below: median(scenes.map(({ quantities }) => quantities[k].below)),
  above: median(scenes.map(({ quantities }) => quantities[k].above)),
  width: median(scenes.map(({ quantities }) => quantities[k].width)),
});
