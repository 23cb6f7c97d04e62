import { CLEAR } from "@sunfathom/optics";
import { cameraState } from "../camera/camera-state.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { cautionsFor } from "../messages/cautions-for.js";
import { sunReasons } from "../messages/sun-reasons.js";
import type { ColourRecoveryAnswer, Recording, RecordingKind } from "../result/colour-recovery.js";
import type { Estimate } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { recoveryReasons } from "./reasons.js";
import { type GreyRecord, qualityOf, recordGrey } from "./record-grey.js";
import { depthWithin_m, redDownTo_m } from "./red-down-to.js";
import { ACCEPTABLE, GONE } from "./red-light.js";

const WITHOUT: readonly RecordingKind[] = ["no_filter"];
const WITH_FILTER: readonly RecordingKind[] = ["no_filter", "filter_best_exposure", "filter_same_settings"];

function recordsAt(conditions: Conditions, nuisance: Nuisance, depth_m: number): GreyRecord[] {
  const stage = stageAt(underwater(conditions, nuisance), depth_m);
  const camera = cameraState(conditions.scene, nuisance);
  const bare = recordGrey(stage, CLEAR, camera);
  if (!hasLensFilter(conditions.scene)) return [bare];
  const filter = lensFilterOf(conditions.scene, nuisance);
  return [bare, recordGrey(stage, filter, camera), recordGrey(stage, filter, camera, bare.exposure)];
}

/** Logarithms of the depths to which red is acceptable and from which it is gone, without and, where there is one, with filter. */
function redDepths(conditions: Conditions, nuisance: Nuisance): number[] {
  const { scene } = conditions;
  const filters = hasLensFilter(scene) ? [CLEAR, lensFilterOf(scene, nuisance)] : [CLEAR];
  return filters.flatMap((filter) =>
    [ACCEPTABLE, GONE].map((ratio) => Math.log2(redDownTo_m(conditions, nuisance, filter, ratio))),
  );
}

const asRecording = (recording: RecordingKind, record: GreyRecord, redLight: Estimate): Recording => {
  const { redLight: _, exposure: __, ...rest } = record;
  const red_light_signal_to_noise = mapRising(redLight, (l) => 2 ** l);
  return {
    recording,
    ...rest,
    red_light_signal_to_noise,
    red_quality: qualityOf(red_light_signal_to_noise.likely),
  };
};

/** Signal over noise that stands for none at all, where a filter lets no red pass: a spread of nothing has no logarithm. */
const LEAST_RED_LIGHT = 1e-6;

type RedDepths = Partial<
  Pick<
    ColourRecoveryAnswer,
    | "red_acceptable_to_without_filter_depth_m"
    | "red_gone_from_without_filter_depth_m"
    | "red_acceptable_to_with_filter_depth_m"
    | "red_gone_from_with_filter_depth_m"
  >
>;

function namedDepths(estimates: readonly Estimate[]): RedDepths {
  const [acceptable, gone, acceptableFiltered, goneFiltered] = estimates.map((e) =>
    mapRising(e, depthWithin_m),
  );
  return {
    ...(acceptable && { red_acceptable_to_without_filter_depth_m: acceptable }),
    ...(gone && { red_gone_from_without_filter_depth_m: gone }),
    ...(acceptableFiltered && { red_acceptable_to_with_filter_depth_m: acceptableFiltered }),
    ...(goneFiltered && { red_gone_from_with_filter_depth_m: goneFiltered }),
  };
}

/**
 * What grading can still bring back: photons, noise and code values of each channel on an 18 % grey, with and without the scene's
 * filter, and where red is gone for good.
 * @throws SceneProblem without any light, or for a sun below the model's domain.
 */
export function colourRecovery(scene: Scene): ColourRecoveryAnswer {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depths = depthsOf(scene);
  const kinds = hasLensFilter(scene) ? WITH_FILTER : WITHOUT;
  const inDaylight = conditions.daylight !== undefined;
  const causes = [...causesOf(conditions), ...FILTER_CAUSES];
  const propagated = propagate((nuisance) => {
    const red = depths.flatMap((depth_m) =>
      recordsAt(conditions, nuisance, depth_m).map(({ redLight }) =>
        Math.log2(Math.max(LEAST_RED_LIGHT, redLight)),
      ),
    );
    return inDaylight ? [...red, ...redDepths(conditions, nuisance)] : red;
  }, causes);
  const { estimates } = propagated;
  const answers = depths.map((depth_m, d) => ({
    depth_m,
    recordings: recordsAt(conditions, NOMINAL, depth_m).map((record, r) =>
      asRecording(kinds[r], record, estimates[d * kinds.length + r]),
    ),
  }));
  const trusted = redTrustedTo_m(underwater(conditions, NOMINAL));
  const answer = {
    depths: answers,
    ...namedDepths(estimates.slice(depths.length * kinds.length)),
    ...(trusted === undefined ? {} : { red_trusted_to_depth_m: trusted }),
  };
  return {
    ...answer,
    reasons: [...recoveryReasons(answer), ...sunReasons(conditions)],
    cautions: cautionsFor(scene),
    uncertainty: shareOfCauses(propagated, (depths.length - 1) * kinds.length),
    sources: [
      ...new Set([...lightSources(conditions), "camera_recording", "port_radiance", "bartlett_1998"]),
    ],
  };
}
