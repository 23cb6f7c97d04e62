import { stopsToDensity } from "@sunfathom/optics";
import {
  type ExposureLimits,
  FITS_WITHIN_STOPS,
  limitsOf,
  type Settings,
  settingsFor,
} from "../camera/exposure-settings.js";
import type { Conditions } from "../light/conditions.js";
import type { Estimate } from "../result/common.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Each } from "../uncertainty/figures.js";
import { mapFalling, mapRising } from "../uncertainty/percentiles.js";
import type { Budget } from "./budget.js";
import { sensitivityFor } from "./sensitivity.js";
import { waysToPay } from "./ways-to-pay.js";

/** Stops missing (above 0) or in excess (below 0) at the extreme settings, from an exposure value. */
const shortfall = (ev100: number, { max_iso, min_f_number, shutter_s }: ExposureLimits): number =>
  Math.log2((sensitivityFor(ev100) * min_f_number ** 2) / shutter_s / max_iso);
const excess = (ev100: number, { min_iso, max_f_number, shortest_shutter_s }: ExposureLimits): number =>
  -Math.log2((sensitivityFor(ev100) * max_f_number ** 2) / shortest_shutter_s / min_iso);

/**
 * What no state of the world has below zero may still be shifted there: from a value near zero by shifts added in quadrature,
 * which are larger than each of them.
 */
const atLeastZero = (e: Estimate): Estimate => mapRising(e, (x) => Math.max(0, x));
function verdictFields(settings: Settings, ev100: Estimate, limits: ExposureLimits) {
  if (settings.off_by_stops < -FITS_WITHIN_STOPS) {
    return {
      verdict: "too_dark" as const,
      shortfall_stops: atLeastZero(mapFalling(ev100, (ev) => shortfall(ev, limits))),
    };
  }
  if (settings.off_by_stops > FITS_WITHIN_STOPS) {
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

export function exposureAtDepth(
  conditions: Conditions,
  depth_m: number,
  budget: Each<Budget, Estimate>,
): ExposureAtDepth {
  const { scene, daylight } = conditions;
  const limits = limitsOf(scene);
  const settings = settingsFor(sensitivityFor(budget.meteredEv100.likely), limits);
  const inDaylight = daylight !== undefined;
  return {
    depth_m,
    ...(inDaylight
      ? {
          surface_loss_stops: atLeastZero(budget.surface),
          depth_loss_stops: atLeastZero(budget.depth),
          upright_loss_stops: budget.upright,
        }
      : {}),
    distance_loss_stops: atLeastZero(budget.distance),
    port_loss_stops: budget.port,
    lens_filter_loss_stops: atLeastZero(budget.lensFilter),
    ...(scene.lamps.length > 0 ? { lamp_filter_loss_stops: atLeastZero(budget.lampFilter) } : {}),
    ...(inDaylight ? { total_loss_stops: atLeastZero(budget.total) } : {}),
    subject_illuminance_lx: mapRising(budget.log2SubjectLux, (l) => 2 ** l),
    exposure_value_ev100: budget.ev100,
    card_exposure_value_ev100: budget.cardEv100,
    ...(inDaylight
      ? { haze_gain_stops: atLeastZero(budget.hazeGain), scene_exposure_value_ev100: budget.sceneEv100 }
      : {}),
    ...verdictFields(settings, budget.meteredEv100, limits),
    iso: settings.iso,
    f_number: settings.f_number,
    shutter_s: settings.shutter_s,
    contrast_left_percent: mapFalling(budget.contrast, (stops) => 100 * 2 ** -stops),
    ways_to_pay: waysToPay(conditions, depth_m, budget.meteredEv100.likely, settings),
  };
}
