import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { ExposureLossReasons } from "../codes/exposure-loss.js";
import type { LightReasons } from "../codes/light.js";
import { hasLensFilter } from "../light/lens-filter.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { HAZE_LIMITS_BELOW_PERCENT } from "./haze-limits.js";
import { meteredOnSubject } from "./sensitivity.js";

type Reason = CodedReason<ExposureLossReasons & LightReasons>;

const reason = reasonsOf<ExposureLossReasons>();

/** From this gap between subject and scene on, which of them is exposed for is told. */
const LEVELS_APART_STOPS = 1;

/** From a click of a third of a stop on it is worth correcting what the camera meters by itself. */
const AUTO_IS_OFF_STOPS = 1 / 3;

/** How much brighter the picture is on the whole than its subject. */
const levelsApart = (exposure: ExposureAtDepth) => {
  const { depth_m, scene_exposure_value_ev100: scene } = exposure;
  return { depth_m, stops: scene ? scene.likely - meteredOnSubject(exposure) : 0 };
};

export function exposureReasons(scene: Scene, answers: Readonly<NonEmpty<ExposureAtDepth>>): Reason[] {
  const shallowest = answers[0];
  const deepest = lastOf(answers);
  const reasons: Reason[] = [];
  if (shallowest.verdict === "too_bright") reasons.push(...tooBright(shallowest));
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
    const { depth_m, iso, f_number } = answer;
    reasons.push(
      reason("exposure_fits", "computed", { depth_m, iso, f_number, ev: meteredOnSubject(answer) }),
    );
  }
  const isAuto = scene.exposure_mode === "auto";
  const apart = answers
    .map(levelsApart)
    .find(({ stops }) => Math.abs(stops) > (isAuto ? AUTO_IS_OFF_STOPS : LEVELS_APART_STOPS));
  if (apart) reasons.push(reason(isAuto ? "auto_exposes_picture" : "levels_apart", "computed", apart));
  reasons.push(reason("port_takes", "computed", { stops: deepest.port_loss_stops.likely }));
  if (deepest.total_loss_stops && deepest.depth_loss_stops) {
    reasons.push(
      reason("water_takes_most", "computed", {
        depth_m: deepest.depth_m,
        depth_stops: deepest.depth_loss_stops.likely,
        total_stops: deepest.total_loss_stops.likely,
      }),
    );
  }
  if (deepest.contrast_left_percent.likely < HAZE_LIMITS_BELOW_PERCENT) {
    reasons.push(
      reason("haze_is_the_limit", "judgement", {
        distance_m: scene.subject_distance_m,
        contrast_percent: deepest.contrast_left_percent.likely,
      }),
    );
  }
  return reasons;
}

const tooBright = ({
  depth_m,
  iso,
  f_number,
  excess_stops,
  neutral_density_needed,
  ways_to_pay,
}: ExposureAtDepth): Reason[] => {
  const closed = ways_to_pay.find(({ way, enough }) => way === "aperture" && enough)?.f_number;
  return [
    reason("too_bright", "computed", {
      depth_m,
      excess_stops: excess_stops?.likely ?? 0,
      iso,
      f_number,
      density: neutral_density_needed ?? 0,
    }),
    ...(closed === undefined ? [] : [reason("aperture_can_close", "computed", { f_number: closed })]),
  ];
};
