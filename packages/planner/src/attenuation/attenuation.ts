import {
  cctDuv,
  chromaticity,
  listOf,
  multiply,
  pathTransmittance,
  type Spectrum,
  twoTo,
  WAVELENGTHS_NM,
  xyzOf,
} from "@sunfathom/optics";
import { cautionsFor } from "../cautions/cautions-for.js";
import type { AttenuationReasons } from "../codes/attenuation.js";
import { reasonsOf } from "../codes/coded.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf, equalDepthsOf } from "../light/depths.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { lightSources } from "../light/sources.js";
import { type Underwater, underwater } from "../light/underwater.js";
import { itemAt, lastOf, lastValue, mapEach, type NonEmpty } from "../lists/non-empty.js";
import { cctReasons } from "../reasons/cct-reasons.js";
import { lightReason } from "../reasons/light-reason.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { AttenuationAnswer, DepthLight } from "../result/attenuation.js";
import type { Estimate } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { type Cause, causesOf } from "../uncertainty/causes.js";
import type { Each } from "../uncertainty/figures.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { mapFalling, mapRising } from "../uncertainty/percentiles.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { cardFitFigures } from "./card-fit.js";
import { type FadedLight, Fading } from "./fading.js";
import { topLight } from "./losses.js";

const reason = reasonsOf<AttenuationReasons>();

const percentLeft = (stops: Estimate): Estimate => mapFalling(stops, (s) => 100 * twoTo(-s));

type FadedEstimates = Record<keyof FadedLight, Estimate>;

const fadedAt = (faded: Each<FadedLight, Estimate>, d: number): FadedEstimates => ({
  red: itemAt(faded.red, d),
  green: itemAt(faded.green, d),
  blue: itemAt(faded.blue, d),
  photopic: itemAt(faded.photopic, d),
  par: itemAt(faded.par, d),
  level: itemAt(faded.level, d),
});

function depthLight(
  world: Underwater,
  top: Spectrum,
  depth_m: number,
  { red, green, blue, photopic, par, level }: FadedEstimates,
): DepthLight {
  const spectrum_left = pathTransmittance(world.kd_per_m, depth_m);
  const { x, y } = chromaticity(xyzOf(multiply(spectrum_left, top)));
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
    spectrum_left: listOf(spectrum_left),
    x,
    y,
    duv,
    ...(cct_K === undefined ? {} : { cct_K }),
    ...(world.daylight ? { illuminance_lx: mapRising(level, twoTo) } : {}),
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
  const causes = causesOfFading(conditions);
  const fading = new Fading(conditions, equalDepthsOf(scene));
  const propagated = propagate((nuisance) => fading.in(underwater(conditions, nuisance)), causes);
  const { estimates } = propagated;
  const world = underwater(conditions, NOMINAL);
  const top = topLight(conditions);
  const answers = mapEach(depths, (depth_m, d) =>
    depthLight(world, top, depth_m, fadedAt(estimates.depths, d)),
  );
  const reasons = [...whyOf(world, answers), ...sunReasons(conditions)];
  const uncertainty = shareOfCauses(propagated, (figures) => lastValue(figures.depths.red));
  return {
    wavelengths_nm: listOf(WAVELENGTHS_NM),
    depths: answers,
    ...(conditions.water.cardFit ? { card_fit: cardFitFigures(conditions.water.cardFit, scene) } : {}),
    red_to_tenth_depth_m: estimates.redToTenth_m,
    red_to_hundredth_depth_m: estimates.redToHundredth_m,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty }),
    uncertainty,
    sources: [...lightSources(conditions), "bartlett_1998"],
  };
}

/** Causes that do not change the light on a horizontal surface. */
const WITHOUT_BEARING = new Set<string>([
  "path_scattering",
  "upright_share",
  "light_field",
  "sea_floor",
  "lamp_beam",
]);

/** What is not known of how light fades on its way down. */
export const causesOfFading = (conditions: Conditions): Cause[] =>
  causesOf(conditions).filter(({ code }) => !WITHOUT_BEARING.has(code));

function whyOf(world: Underwater, answers: NonEmpty<DepthLight>): AttenuationAnswer["reasons"] {
  const deepest = lastOf(answers);
  const reasons: AttenuationAnswer["reasons"] = [
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
    reasons.push(lightReason("red_not_only_transmitted", "computed", { depth_m: trusted_m }));
  }
  return reasons;
}
