import { CLEAR, type Spectrum } from "@sunfathom/optics";
import { balanceSources } from "../camera/balance-setting.js";
import { cameraState } from "../camera/camera-state.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { lightSources } from "../light/sources.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { lastOf, mapBoth, mapEach } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { ColourRecoveryAnswer, Recording, RecordingKind } from "../result/colour-recovery.js";
import type { Estimate } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, filterCausesOf } from "../uncertainty/causes.js";
import type { Each } from "../uncertainty/figures.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { recoveryReasons } from "./reasons.js";
import { type GreyRecord, qualityOf, recordGrey } from "./record-grey.js";
import { depthWithin_m, redDownTo_m } from "./red-down-to.js";
import { ACCEPTABLE, GONE } from "./red-light.js";

/** One of each recording of a grey: those through a filter only where the scene has one. */
interface OfRecordings<T> {
  no_filter: T;
  filtered?: { filter_best_exposure: T; filter_same_settings: T };
}

function recordsAt(conditions: Conditions, nuisance: Nuisance, depth_m: number): OfRecordings<GreyRecord> {
  const stage = stageAt(underwater(conditions, nuisance), depth_m);
  const camera = cameraState(conditions.scene, nuisance);
  const no_filter = recordGrey(stage, CLEAR, camera);
  if (!hasLensFilter(conditions.scene)) return { no_filter };
  const filter = lensFilterOf(conditions.scene, nuisance);
  return {
    no_filter,
    filtered: {
      filter_best_exposure: recordGrey(stage, filter, camera),
      filter_same_settings: recordGrey(stage, filter, camera, no_filter.exposure),
    },
  };
}

/** Signal over noise that stands for none at all, where a filter lets no red pass: a spread of nothing has no logarithm. */
const LEAST_RED_LIGHT = 1e-6;

/** Signal over noise of red light alone, as a logarithm to base 2. */
const log2RedLight = ({ redLight }: GreyRecord): number => Math.log2(Math.max(LEAST_RED_LIGHT, redLight));

const log2RedLights = ({ no_filter, filtered }: OfRecordings<GreyRecord>): OfRecordings<number> => ({
  no_filter: log2RedLight(no_filter),
  ...(filtered && {
    filtered: {
      filter_best_exposure: log2RedLight(filtered.filter_best_exposure),
      filter_same_settings: log2RedLight(filtered.filter_same_settings),
    },
  }),
});

function recordingsOf(
  { no_filter, filtered }: OfRecordings<GreyRecord>,
  redLight: OfRecordings<Estimate>,
): Recording[] {
  const bare = asRecording("no_filter", no_filter, redLight.no_filter);
  if (!filtered || !redLight.filtered) return [bare];
  const { filter_best_exposure, filter_same_settings } = redLight.filtered;
  return [
    bare,
    asRecording("filter_best_exposure", filtered.filter_best_exposure, filter_best_exposure),
    asRecording("filter_same_settings", filtered.filter_same_settings, filter_same_settings),
  ];
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

/** Depths to which red is acceptable and from which it is gone, as logarithms to base 2. */
interface RedEnds {
  acceptable: number;
  gone: number;
}

/** The same without and, where the scene has one, with its filter. */
interface RedDepths {
  without: RedEnds;
  with?: RedEnds;
}

function redDepths(conditions: Conditions, nuisance: Nuisance): RedDepths {
  const { scene } = conditions;
  const ends = (filter: Spectrum): RedEnds => ({
    acceptable: Math.log2(redDownTo_m(conditions, nuisance, filter, ACCEPTABLE)),
    gone: Math.log2(redDownTo_m(conditions, nuisance, filter, GONE)),
  });
  return {
    without: ends(CLEAR),
    ...(hasLensFilter(scene) ? { with: ends(lensFilterOf(scene, nuisance)) } : {}),
  };
}

type NamedDepths = Partial<
  Pick<
    ColourRecoveryAnswer,
    | "red_acceptable_to_without_filter_depth_m"
    | "red_gone_from_without_filter_depth_m"
    | "red_acceptable_to_with_filter_depth_m"
    | "red_gone_from_with_filter_depth_m"
  >
>;

function namedDepths({ without, with: filtered }: Each<RedDepths, Estimate>): NamedDepths {
  const depth_m = (log2Depth: Estimate) => mapRising(log2Depth, depthWithin_m);
  return {
    red_acceptable_to_without_filter_depth_m: depth_m(without.acceptable),
    red_gone_from_without_filter_depth_m: depth_m(without.gone),
    ...(filtered && {
      red_acceptable_to_with_filter_depth_m: depth_m(filtered.acceptable),
      red_gone_from_with_filter_depth_m: depth_m(filtered.gone),
    }),
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
  const inDaylight = conditions.daylight !== undefined;
  const causes = [...causesOf(conditions), ...filterCausesOf(scene)];
  const propagated = propagate(
    (nuisance) => ({
      depths: mapEach(depths, (depth_m) => log2RedLights(recordsAt(conditions, nuisance, depth_m))),
      ...(inDaylight ? { redDepths: redDepths(conditions, nuisance) } : {}),
    }),
    causes,
  );
  const { estimates } = propagated;
  const answers = mapBoth(depths, estimates.depths, (depth_m, redLight) => ({
    depth_m,
    recordings: recordingsOf(recordsAt(conditions, NOMINAL, depth_m), redLight),
  }));
  const trusted = redTrustedTo_m(underwater(conditions, NOMINAL));
  const answer = {
    depths: answers,
    ...(estimates.redDepths ? namedDepths(estimates.redDepths) : {}),
    ...(trusted === undefined ? {} : { red_trusted_to_depth_m: trusted }),
  };
  const reasons = [...recoveryReasons(answer), ...sunReasons(conditions)];
  const uncertainty = shareOfCauses(propagated, (figures) => lastOf(figures.depths).no_filter);
  return {
    ...answer,
    reasons,
    cautions: cautionsFor(scene, { reasons, uncertainty }),
    uncertainty,
    sources: [
      ...new Set([
        ...lightSources(conditions),
        "camera_recording",
        "port_radiance",
        "bartlett_1998",
        ...balanceSources(scene),
      ]),
    ],
  };
}
