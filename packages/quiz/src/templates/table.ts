import type { Template } from "../item/template.js";
import { autoSettings } from "./auto-settings.js";
import { backscatterOrder } from "./backscatter-order.js";
import { balanceLasts } from "./balance-lasts.js";
import { balanceTarget } from "./balance-target.js";
import { brightestHour } from "./brightest-hour.js";
import { cardReading } from "./card-reading.js";
import { codesPerStop } from "./codes-per-stop.js";
import { colourOrder } from "./colour-order.js";
import { contrastOrder } from "./contrast-order.js";
import { densitiesStack } from "./densities-stack.js";
import { densityMatch } from "./density-match.js";
import { densityToEvenOut } from "./density-to-even-out.js";
import { densityToStopsTemplate } from "./density-to-stops.js";
import { exposureWay } from "./exposure-way.js";
import { filterForWater } from "./filter-for-water.js";
import { filterTwoDives } from "./filter-two-dives.js";
import { flatPortField } from "./flat-port-field.js";
import { floorLight } from "./floor-light.js";
import { gradeSaves } from "./grade-saves.js";
import { histogramCode } from "./histogram-code.js";
import { histogramReading } from "./histogram-reading.js";
import { kelvinMeaning } from "./kelvin-meaning.js";
import { kelvinOrder } from "./kelvin-order.js";
import { keptBalance } from "./kept-balance.js";
import { lampFalloff } from "./lamp-falloff.js";
import { lampFilterWater } from "./lamp-filter-water.js";
import { lampOnlyBalance } from "./lamp-only-balance.js";
import { lampPath } from "./lamp-path.js";
import { lampPlace } from "./lamp-place.js";
import { lossBudget } from "./loss-budget.js";
import { miredShiftTemplate } from "./mired-shift.js";
import { mixedVerdict } from "./mixed-verdict.js";
import { moreRedLight } from "./more-red-light.js";
import { mountFaults } from "./mount-faults.js";
import { mountOrder } from "./mount-order.js";
import { mountPlace } from "./mount-place.js";
import { orderOfDive } from "./order-of-dive.js";
import { payWithAperture } from "./pay-with-aperture.js";
import { payWithIso } from "./pay-with-iso.js";
import { percentToStops } from "./percent-to-stops.js";
import { recordingGain } from "./recording-gain.js";
import { redInPost } from "./red-in-post.js";
import { redLeft } from "./red-left.js";
import { redReach } from "./red-reach.js";
import { ringChain } from "./ring-chain.js";
import { ringDirection } from "./ring-direction.js";
import { safeBatteries } from "./safe-batteries.js";
import { safeLamps } from "./safe-lamps.js";
import { sheetShift } from "./sheet-shift.js";
import { shutterAngle } from "./shutter-angle.js";
import { spectrumMostLeft } from "./spectrum-most-left.js";
import { sunOrDepth } from "./sun-or-depth.js";
import { sunTurn } from "./sun-turn.js";
import { waterFromSpectrum } from "./water-from-spectrum.js";
import { wayOut } from "./way-out.js";
import { whenToBalance } from "./when-to-balance.js";

/** Every template, along the road of light. To add a question, add its file here. */
export const TEMPLATES: readonly Template[] = [
  colourOrder,
  redLeft,
  percentToStops,
  spectrumMostLeft,
  waterFromSpectrum,
  redReach,
  filterForWater,
  densityToStopsTemplate,
  densitiesStack,
  densityMatch,
  densityToEvenOut,
  payWithIso,
  payWithAperture,
  exposureWay,
  moreRedLight,
  whenToBalance,
  lampOnlyBalance,
  kelvinOrder,
  kelvinMeaning,
  miredShiftTemplate,
  mixedVerdict,
  wayOut,
  lampFalloff,
  lampPath,
  redInPost,
  ringChain,
  ringDirection,
  flatPortField,
  sheetShift,
  mountPlace,
  safeLamps,
  orderOfDive,
  shutterAngle,
  histogramCode,
  lossBudget,
  sunTurn,
  balanceLasts,
  balanceTarget,
  backscatterOrder,
  lampFilterWater,
  filterTwoDives,
  codesPerStop,
  cardReading,
  gradeSaves,
  autoSettings,
  mountFaults,
  safeBatteries,
  keptBalance,
  lampPlace,
  mountOrder,
  contrastOrder,
  sunOrDepth,
  brightestHour,
  floorLight,
  recordingGain,
  histogramReading,
];
