import {
  cctDuv,
  chromaticity,
  FIRST_NM,
  illuminance_lx,
  illuminant,
  integrateProduct,
  par_umol_m2_s,
  pathTransmittance,
  type Spectrum,
  STEP_NM,
  WAVELENGTHS_NM,
  xyzOf,
} from "@sunfathom/optics";
import { sensorProfile } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { lightSources } from "../light/sources.js";
import { type Underwater, underwater } from "../light/underwater.js";
import { cautionsFor } from "../messages/cautions-for.js";
import { cctReasons } from "../messages/cct-reason.js";
import { reason } from "../messages/say.js";
import { sunReasons } from "../messages/sun-reasons.js";
import type { AttenuationAnswer, DepthLight } from "../result/attenuation.js";
import type { Estimate, Reason } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { causesOf } from "../uncertainty/causes.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { mapFalling, mapRising, propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { cardFitFigures } from "./card-fit.js";

const AT_600_NM = (600 - FIRST_NM) / STEP_NM;
const RED_BAND: Spectrum = WAVELENGTHS_NM.map((nm, i) =>
  i === AT_600_NM ? 0.5 : nm > 600 && nm <= 700 ? 1 : 0,
);
const DEEPEST_SEARCHED_M = 300;

/** Light just below the surface; an even sky of 5500 K where there is no daylight, for losses only. */
const topLight = (world: Underwater): Spectrum => world.daylight?.below.downwelling ?? illuminant("D55");

const SEEN_BY: readonly ((light: Spectrum, nuisance: Nuisance) => number)[] = [
  (light, n) => integrateProduct(light, sensorProfile(n.crosstalkSd).sensor.red),
  (light, n) => integrateProduct(light, sensorProfile(n.crosstalkSd).sensor.green),
  (light, n) => integrateProduct(light, sensorProfile(n.crosstalkSd).sensor.blue),
  (light) => illuminance_lx(light),
  (light) => par_umol_m2_s(light),
];

function lossesAt(world: Underwater, depth_m: number): number[] {
  const top = topLight(world);
  const left = pathTransmittance(world.kd_per_m, depth_m).map((t, i) => t * top[i]);
  return SEEN_BY.map((seen) => Math.log2(seen(top, world.nuisance) / seen(left, world.nuisance)));
}

/** Depth at which light of 600 to 700 nm is down to a share of what it is below the surface, by bisection to a millimetre. */
function redDownTo(world: Underwater, share: number): number {
  const top = topLight(world);
  const reference = integrateProduct(top, RED_BAND);
  const leftAt = (z: number) =>
    integrateProduct(
      pathTransmittance(world.kd_per_m, z).map((t, i) => t * top[i]),
      RED_BAND,
    ) / reference;
  let low = 0;
  let high = DEEPEST_SEARCHED_M;
  while (high - low > 1e-3) {
    const middle = (low + high) / 2;
    if (leftAt(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const percentLeft = (stops: Estimate): Estimate => mapFalling(stops, (s) => 100 * 2 ** -s);

function depthLight(
  world: Underwater,
  depth_m: number,
  losses: readonly Estimate[],
  level: Estimate | undefined,
): DepthLight {
  const [red, green, blue, photopic, par] = losses;
  const spectrum_left = pathTransmittance(world.kd_per_m, depth_m);
  const top = topLight(world);
  const { x, y } = chromaticity(xyzOf(spectrum_left.map((t, i) => t * top[i])));
  const { cct_K, duv } = cctDuv(x, y);
  return {
    depth_m,
    red_loss_stops: red,
    green_loss_stops: green,
    blue_loss_stops: blue,
    photopic_loss_stops: photopic,
    par_loss_stops: par,
    red_left_percent: percentLeft(red),
    green_left_percent: percentLeft(green),
    blue_left_percent: percentLeft(blue),
    photopic_left_percent: percentLeft(photopic),
    par_left_percent: percentLeft(par),
    spectrum_left: Array.from(spectrum_left),
    x,
    y,
    duv,
    ...(cct_K === undefined ? {} : { cct_K }),
    ...(level ? { illuminance_lx: mapRising(level, (l) => 2 ** l) } : {}),
  };
}

/**
 * Light on a horizontal surface, depth by depth: what is left per wavelength, per sensor channel, photopic and as quanta, its
 * chromaticity, and how far red reaches.
 * @throws SceneProblem for a sun below the model's domain.
 */
export function attenuation(scene: Scene): AttenuationAnswer {
  const conditions = conditionsOf(scene);
  const depths = depthsOf(scene);
  const causes = causesOf(conditions).filter(({ id }) => !WITHOUT_BEARING.has(id));
  const numbers = SEEN_BY.length + 1;
  const propagated = propagate((nuisance) => {
    const world = underwater(conditions, nuisance);
    const level = Math.log2(illuminance_lx(topLight(world)));
    const perDepth = depths.flatMap((depth_m) => {
      const losses = lossesAt(world, depth_m);
      return [...losses, level - losses[3]];
    });
    return [...perDepth, redDownTo(world, 0.1), redDownTo(world, 0.01)];
  }, causes);
  const { estimates } = propagated;
  const world = underwater(conditions, NOMINAL);
  const answers = depths.map((depth_m, i) => {
    const own = estimates.slice(i * numbers, (i + 1) * numbers);
    return depthLight(
      world,
      depth_m,
      own.slice(0, SEEN_BY.length),
      world.daylight ? own[SEEN_BY.length] : undefined,
    );
  });
  const deepest = depths.length - 1;
  return {
    wavelengths_nm: Array.from(WAVELENGTHS_NM),
    depths: answers,
    ...(conditions.water.cardFit ? { card_fit: cardFitFigures(conditions.water.cardFit, scene) } : {}),
    red_to_tenth_depth_m: estimates[estimates.length - 2],
    red_to_hundredth_depth_m: estimates[estimates.length - 1],
    reasons: [...reasonsOf(world, answers), ...sunReasons(conditions)],
    cautions: cautionsFor(scene),
    uncertainty: shareOfCauses(propagated, deepest * numbers),
    sources: [...lightSources(conditions), "bartlett_1998"],
  };
}

/** Causes that do not change the light on a horizontal surface. */
const WITHOUT_BEARING = new Set(["path_scattering", "upright_share", "lamp_beam"]);

function reasonsOf(world: Underwater, answers: readonly DepthLight[]): Reason[] {
  const deepest = answers[answers.length - 1];
  const reasons = [
    reason("red_goes_first", "computed", {
      red_stops: deepest.red_loss_stops.likely,
      green_stops: deepest.green_loss_stops.likely,
      blue_stops: deepest.blue_loss_stops.likely,
      depth_m: deepest.depth_m,
    }),
  ];
  reasons.push(...cctReasons(answers));
  if (world.daylight) reasons.push(reason("sun_path", "computed", { mu0: world.daylight.below.mu0 }));
  else reasons.push(reason("no_daylight_relative", "computed"));
  const trusted_m = redTrustedTo_m(world);
  if (trusted_m !== undefined && deepest.depth_m > trusted_m) {
    reasons.push(reason("red_not_only_transmitted", "computed", { depth_m: trusted_m }));
  }
  return reasons;
}
