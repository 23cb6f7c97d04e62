import {
  add,
  ev100FromIlluminance,
  illuminance_lx,
  lossStops,
  multiply,
  type Spectrum,
  stopsToDensity,
} from "@sunfathom/optics";
import { type ExposureLimits, limitsOf, type Settings, settingsFor } from "../camera/exposure-settings.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import {
  CLEAR_LAMPS,
  downwellingAt,
  lampLightAt,
  towardsCamera,
  type Underwater,
  underwater,
  uprightDaylightAt,
} from "../light/underwater.js";
import { cautionsFor } from "../messages/cautions-for.js";
import { reason } from "../messages/say.js";
import { sunReasons } from "../messages/sun-reasons.js";
import type { Estimate, Reason } from "../result/common.js";
import type { ExposureAtDepth, ExposureLossAnswer } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { mapRising, propagate, shareOfCauses } from "../uncertainty/propagate.js";

/** The budget at one depth: losses in stops, levels as logarithms to base 2. Names carry over to the answer. */
interface Budget {
  surface: number;
  depth: number;
  upright: number;
  distance: number;
  lensFilter: number;
  lampFilter: number;
  total: number;
  log2SubjectLux: number;
  ev100: number;
}
const BUDGET_KEYS = [
  "surface",
  "depth",
  "upright",
  "distance",
  "lensFilter",
  "lampFilter",
  "total",
  "log2SubjectLux",
  "ev100",
] as const satisfies readonly (keyof Budget)[];

function budgetAt(world: Underwater, lensFilter: Spectrum, depth_m: number): Budget {
  const daylight = uprightDaylightAt(world, depth_m);
  const lamps = lampLightAt(world);
  const subject = add(daylight, lamps);
  const arriving = multiply(subject, towardsCamera(world));
  const through = multiply(arriving, lensFilter);
  const atLens = illuminance_lx(through);
  const lux = illuminance_lx(subject);
  const down = illuminance_lx(downwellingAt(world, depth_m));
  const below = world.daylight ? illuminance_lx(world.daylight.below.downwelling) : 0;
  const above = world.daylight ? illuminance_lx(world.daylight.above) : 0;
  const loss = (from: number, to: number) => (to > 0 ? lossStops(from, to) : 0);
  const seenDaylight = illuminance_lx(multiply(multiply(daylight, towardsCamera(world)), lensFilter));
  return {
    surface: loss(above, below),
    depth: loss(below, down),
    upright: loss(down, illuminance_lx(daylight)),
    distance: loss(lux, illuminance_lx(arriving)),
    lensFilter: loss(illuminance_lx(arriving), atLens),
    lampFilter: loss(illuminance_lx(lampLightAt(world, CLEAR_LAMPS)), illuminance_lx(lamps)),
    total: loss(above, seenDaylight),
    log2SubjectLux: Math.log2(lux),
    ev100: ev100FromIlluminance(atLens),
  };
}

/** Product of ISO, shutter time and 1/N^2 that an exposure value at ISO 100 asks for. */
const sensitivityFor = (ev100: number): number => 100 * 2 ** -ev100;

/** Stops missing (above 0) or in excess (below 0) at the extreme settings, from an exposure value. */
const shortfall = (ev100: number, { max_iso, min_f_number, shutter_s }: ExposureLimits): number =>
  Math.log2((sensitivityFor(ev100) * min_f_number ** 2) / shutter_s / max_iso);
const excess = (ev100: number, { min_iso, max_f_number, shutter_s }: ExposureLimits): number =>
  -Math.log2((sensitivityFor(ev100) * max_f_number ** 2) / shutter_s / min_iso);

const atLeastZero = (e: Estimate): Estimate => mapRising(e, (x) => Math.max(0, x));
const falling = (e: Estimate, f: (x: number) => number): Estimate => ({
  low: f(e.high),
  likely: f(e.likely),
  high: f(e.low),
});

function verdictFields(settings: Settings, ev100: Estimate, limits: ExposureLimits) {
  if (settings.off_by_stops < 0) {
    return {
      verdict: "too_dark" as const,
      shortfall_stops: atLeastZero(falling(ev100, (ev) => shortfall(ev, limits))),
    };
  }
  if (settings.off_by_stops > 0) {
    const excess_stops = atLeastZero(mapRising(ev100, (ev) => excess(ev, limits)));
    return {
      verdict: "too_bright" as const,
      excess_stops,
      neutral_density_needed: stopsToDensity(excess_stops.likely),
      f_number_needed: limits.max_f_number * 2 ** (excess_stops.likely / 2),
    };
  }
  return { verdict: "fits" as const };
}

function atDepth(
  { scene, daylight }: Conditions,
  depth_m: number,
  budget: Record<keyof Budget, Estimate>,
): ExposureAtDepth {
  const limits = limitsOf(scene);
  const settings = settingsFor(sensitivityFor(budget.ev100.likely), limits);
  const inDaylight = daylight !== undefined;
  return {
    depth_m,
    ...(inDaylight
      ? {
          surface_loss_stops: budget.surface,
          depth_loss_stops: budget.depth,
          upright_loss_stops: budget.upright,
        }
      : {}),
    distance_loss_stops: budget.distance,
    lens_filter_loss_stops: budget.lensFilter,
    ...(scene.lamps.length > 0 ? { lamp_filter_loss_stops: budget.lampFilter } : {}),
    ...(inDaylight ? { total_loss_stops: budget.total } : {}),
    subject_illuminance_lx: mapRising(budget.log2SubjectLux, (l) => 2 ** l),
    exposure_value_ev100: budget.ev100,
    ...verdictFields(settings, budget.ev100, limits),
    iso: settings.iso,
    f_number: settings.f_number,
    shutter_s: settings.shutter_s,
  };
}

/**
 * Where the light goes between the surface and the sensor, in stops of luminance, and which settings pay for it: exposure by
 * ISO 2720 as an incident meter at the subject would ask for, less what water and filter take on the way to the sensor.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function exposureLoss(scene: Scene): ExposureLossAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const nominalFilter = hasLensFilter(scene) && !scene.filter_transmittance;
  const causes = [
    ...causesOf(conditions).filter(({ id }) => id !== "sensor"),
    ...(nominalFilter ? FILTER_CAUSES.filter(({ id }) => id !== "full_well") : []),
  ];
  const propagated = propagate((nuisance: Nuisance) => {
    const world = underwater(conditions, nuisance);
    const filter = lensFilterOf(scene, nuisance);
    return depths.flatMap((depth_m) => {
      const budget = budgetAt(world, filter, depth_m);
      return BUDGET_KEYS.map((key) => budget[key]);
    });
  }, causes);
  const count = BUDGET_KEYS.length;
  const answers = depths.map((depth_m, d) => {
    const own = propagated.estimates.slice(d * count, (d + 1) * count);
    const budget = Object.fromEntries(BUDGET_KEYS.map((key, k) => [key, own[k]])) as Record<
      keyof Budget,
      Estimate
    >;
    return atDepth(conditions, depth_m, budget);
  });
  return {
    depths: answers,
    reasons: [...reasonsOf(scene, answers), ...sunReasons(conditions)],
    cautions: cautionsFor(scene),
    uncertainty: shareOfCauses(propagated, (depths.length - 1) * count + BUDGET_KEYS.indexOf("ev100")),
    sources: [...lightSources(conditions), "iso_2720"],
  };
}

function reasonsOf(scene: Scene, answers: readonly ExposureAtDepth[]): Reason[] {
  const shallowest = answers[0];
  const deepest = answers[answers.length - 1];
  const reasons: Reason[] = [];
  if (shallowest.verdict === "too_bright") reasons.push(tooBright(shallowest));
  if (deepest.verdict === "too_dark") {
    reasons.push(
      reason("too_dark", "computed", {
        depth_m: deepest.depth_m,
        shortfall_stops: deepest.shortfall_stops?.likely ?? 0,
        iso: deepest.iso,
        f_number: deepest.f_number,
      }),
    );
    reasons.push(
      hasLensFilter(scene)
        ? reason("filter_makes_it_darker", "computed", { stops: deepest.lens_filter_loss_stops.likely })
        : reason("any_filter_would_worsen", "computed"),
    );
  }
  for (const answer of answers.length > 1 ? [shallowest, deepest] : [shallowest]) {
    if (answer.verdict !== "fits") continue;
    const { depth_m, iso, f_number, exposure_value_ev100 } = answer;
    reasons.push(
      reason("exposure_fits", "computed", { depth_m, iso, f_number, ev: exposure_value_ev100.likely }),
    );
  }
  if (deepest.total_loss_stops && deepest.depth_loss_stops) {
    reasons.push(
      reason("water_takes_most", "computed", {
        depth_m: deepest.depth_m,
        depth_stops: deepest.depth_loss_stops.likely,
        total_stops: deepest.total_loss_stops.likely,
      }),
    );
  }
  return reasons;
}

const tooBright = ({
  depth_m,
  excess_stops,
  f_number_needed,
  neutral_density_needed,
}: ExposureAtDepth): Reason =>
  reason("too_bright", "computed", {
    depth_m,
    excess_stops: excess_stops?.likely ?? 0,
    f_number: f_number_needed ?? 0,
    density: neutral_density_needed ?? 0,
  });
