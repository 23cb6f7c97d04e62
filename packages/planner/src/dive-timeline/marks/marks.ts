/** The plan for a dive, marked against it by the grey cards that were filmed on it. */

import { checkpoint } from "../../checkpoint.js";
import type { Reason } from "../../codes/coded.js";
import { reasonsOf } from "../../codes/coded.js";
import type { MarkReasons } from "../../codes/dive-timelines.js";
import { withoutFilter } from "../../dive-advice/mounted.js";
import type { TimelineMark } from "../../result/dive-timelines.js";
import type { Scene } from "../../scene/scene.js";
import { Hours } from "../light-here.js";
import type { CardFrame } from "../plan.js";
import { type MeasuredExposure, measuredExposure } from "./exposure-marks.js";
import { measuredDensity } from "./filter-mark.js";
import { fittedWater, sampleOf } from "./fitted-water.js";
import { type MeasuredReach, measuredReach } from "./reach-mark.js";
import { agrees } from "./spread.js";
import { waterMarks } from "./water-marks.js";

const reason = reasonsOf<MarkReasons>();
const exactly = (value: number) => ({ low: value, likely: value, high: value });

/**
 * @param scene of the site, with the filter that was on the lens where frames were filmed through one
 * @throws SceneProblem of `card_samples` where no water fits the cards
 */
export function marksOf(scene: Scene, frames: readonly CardFrame[]): TimelineMark[] {
  const bare = new Hours(withoutFilter(scene));
  const filtered = new Hours(scene);
  const samples = (through: boolean) =>
    frames.filter((frame) => frame.through_filter === through).map((frame) => sampleOf(frame, bare));
  const water = fittedWater(bare.start, samples(false));
  const ofFrames = frames.flatMap((frame, i): TimelineMark[] => {
    checkpoint();
    const conditions = (frame.through_filter ? filtered : bare).at(frame.time_s ?? 0);
    const exposure = exposureMark(measuredExposure(conditions, frame), frame, i);
    return frame.balanced ? [exposure, reachMark(measuredReach(conditions, frame), frame, i)] : [exposure];
  });
  return [...ofFrames, ...waterMarks(bare.start, water), ...filterMarks()];

  function filterMarks(): TimelineMark[] {
    const through = samples(true);
    const { filter_kind: kind, filter_density: nominal } = scene;
    if (through.length === 0 || kind === undefined || nominal === undefined) return [];
    const measured = measuredDensity(water, through, kind);
    const isSame = nominal >= measured.low && nominal <= measured.high;
    const figures = { measured: measured.likely, low: measured.low, high: measured.high, nominal };
    return [
      {
        marks: "filter_density",
        predicted: exactly(nominal),
        measured,
        verdict: isSame ? "agrees" : measured.likely > nominal ? "more" : "less",
        reason: reason(isSame ? "mark_filter_agrees" : "mark_filter_differs", "computed", figures),
      },
    ];
  }
}

function exposureMark(
  { predicted, measured, used_ev100 }: MeasuredExposure,
  { depth_m }: CardFrame,
  frame: number,
): TimelineMark {
  const isSame = agrees(predicted, measured);
  const stops = Math.abs(measured.likely - predicted.likely);
  const figures = {
    depth_m,
    predicted_ev100: predicted.likely,
    used_ev100,
    next_ev100: measured.likely,
  };
  const why: Reason<MarkReasons> = isSame
    ? reason("mark_exposure_agrees", "computed", figures)
    : reason(
        measured.likely > predicted.likely ? "mark_exposure_brighter" : "mark_exposure_darker",
        "computed",
        {
          ...figures,
          stops,
        },
      );
  return {
    marks: "exposure",
    frame,
    depth_m,
    predicted,
    measured,
    used_ev100,
    verdict: isSame ? "agrees" : measured.likely > predicted.likely ? "more" : "less",
    reason: why,
  };
}

function reachMark(
  { predicted, measured, inReach }: MeasuredReach,
  { depth_m }: CardFrame,
  frame: number,
): TimelineMark {
  const base = { marks: "balance_reach", frame, depth_m, predicted, measured } as const;
  const figures = { depth_m, measured_stops: measured.likely, predicted_stops: predicted.likely };
  if (inReach && predicted.low <= measured.high)
    return { ...base, verdict: "agrees", reason: reason("mark_reach_neutral", "computed", { depth_m }) };
  if (agrees(predicted, measured))
    return { ...base, verdict: "agrees", reason: reason("mark_reach_agrees", "computed", figures) };
  const isMore = measured.likely > predicted.likely;
  return {
    ...base,
    verdict: isMore ? "more" : "less",
    reason: reason(isMore ? "mark_reach_shorter" : "mark_reach_farther", "computed", figures),
  };
}
