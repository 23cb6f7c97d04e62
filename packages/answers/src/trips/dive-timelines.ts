import { besideDive, type DiveTimelinesRequest, type FieldError } from "@sunfathom/contract";
import {
  type DiveSample,
  type DiveTimelineResult,
  diveTimeline,
  filmedDepths,
  MODEL_VERSION,
  momentsIn,
  nodesFor,
  type Scene,
  type TimelinePlan,
} from "@sunfathom/planner";
import type { TextUnits } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { sayParts, sayReason } from "../say/say-parts.js";
import { shapeOf } from "../shape/shape.js";
import { checkOf } from "../validate/checker.js";
import { Findings } from "../validate/findings.js";
import { member } from "../validate/pointer.js";
import { framesOf } from "./card-frames.js";
import { diveCaptions } from "./dive-captions.js";
import { type Clocks, clipsOf, clocksOf } from "./dive-clips.js";
import { type ReadUddf, withSamples } from "./dive-profile.js";
import type { ReadyTrip, TimelineSize, TripTongue } from "./ready.js";
import { within } from "./site.js";

/** Checks a dive as it was dived, and leaves the computing for later. */
export const diveTimelinesReady =
  (readUddf: ReadUddf) =>
  (raw: unknown, tongue: TripTongue): ReadyTrip<TimelineSize> | Refused =>
    ready(raw, tongue, readUddf);

function ready(raw: unknown, tongue: TripTongue, readUddf: ReadUddf): ReadyTrip<TimelineSize> | Refused {
  const { problems } = tongue;
  const refuse = (findings: Findings): Refused => ({
    status: "problem",
    problem: invalidRequest(findings, problems),
  });
  const findings = new Findings();
  checkOf("DiveTimelinesRequest")(raw, "", findings);
  if (!findings.none) return refuse(findings);
  for (const name of besideDive)
    if (name in (raw as DiveTimelinesRequest).site)
      findings.add(() => ({ pointer: member("/site", name), code: "beside_dive", parameters: { name } }));
  const request = withSamples(raw as DiveTimelinesRequest, readUddf, findings);
  if (request === undefined || !findings.none) return refuse(findings);
  const samples = (request.samples ?? []).map(({ time_s, depth_m }) => ({ time_s, depth_m }));
  const clips = clipsOf(request, samples, findings);
  const events = eventsOf(request, samples, findings);
  const cardFrames = framesOf(request, samples, findings);
  if (!findings.none) return refuse(findings);
  const { expect_model_version: expected = MODEL_VERSION, units = "metric" } = request;
  if (expected !== MODEL_VERSION)
    return { status: "problem", problem: otherModel({ expected, is: MODEL_VERSION }, problems) };
  const depths = filmedDepths(samples, clips, events);
  const site = tongue.prepare("dive-advice", { ...request.site, ...depths });
  const cards = cardFrames === undefined ? "/site/card_samples" : "/card_frames";
  const refuseSite = (refused: Refused): Refused => ({
    status: "problem",
    problem: ofSamples(within("/site", refused, problems), cards),
  });
  if (site.status === "problem") return refuseSite(site);
  // The calculation whose kind of scene it is has checked it, and brought it into the planner's form.
  const scene = site.scene as Scene;
  if (changesFilter(request) && scene.filter_kind === undefined && scene.filter_transmittance === undefined) {
    findings.add(() => ({ pointer: "/events", code: "events_need_filter", parameters: {} }));
    return refuse(findings);
  }
  const filtered = cardFrames?.findIndex(({ through_filter }) => through_filter) ?? -1;
  if (filtered >= 0 && (scene.filter_kind === undefined || scene.filter_density === undefined)) {
    const pointer = `/card_frames/${filtered}/through_filter`;
    findings.add(() => ({ pointer, code: "frames_need_filter", parameters: {} }));
    return refuse(findings);
  }
  const plan: TimelinePlan = {
    scene,
    samples,
    clips,
    ...(events === undefined ? {} : { events }),
    ...(cardFrames === undefined ? {} : { cardFrames }),
  };
  const clocks = clocksOf(request);
  const told = JSON.parse(site.canonical) as object;
  const { scene: _, ...asked } = plan;
  const whole = <T>(make: (result: DiveTimelineResult) => T): T | Refused => {
    try {
      return make(diveTimeline(plan));
    } catch (error) {
      return refuseSite(site.refuse(error));
    }
  };
  return {
    status: "ready",
    canonical: JSON.stringify([units, told, asked, clocks.dive(0), clocks.camera(0)]),
    units,
    scene,
    // A file is read once.
    read: request,
    size: sizeOf(plan),
    compute: () =>
      whole((result) => ({ status: "ok", body: say(result, { site: told, clocks }, tongue, units) })),
    captions: () => whole((result) => ({ status: "ok", text: diveCaptions(result, clocks, tongue, units) })),
  };
}

/** The depths of a site are those of its samples, and cards of the dive are fitted as those of a site: what is wrong is wrong there. */
function ofSamples<P extends { errors?: FieldError[] | undefined }>(problem: P, cards: string): P {
  const errors = problem.errors?.map(({ pointer, ...error }) => ({
    ...error,
    pointer: pointer
      .replace(/^\/site\/(min|max)_depth_m$/, "/samples")
      .replace(/^\/site\/card_samples/, cards),
  }));
  return errors === undefined ? problem : { ...problem, errors };
}

const changesFilter = ({ events = [] }: DiveTimelinesRequest): boolean =>
  events.some(({ event }) => event !== "balance");

/** In the order of time; of one time, in the order in which they were told. */
function eventsOf(
  { events }: DiveTimelinesRequest,
  samples: readonly DiveSample[],
  findings: Findings,
): TimelinePlan["events"] {
  const [first_s, last_s] = [samples[0]?.time_s ?? 0, samples.at(-1)?.time_s ?? 0];
  events?.forEach(({ time_s }, i) => {
    if (time_s >= first_s && time_s <= last_s) return;
    const parameters = { time_s, first_s, last_s };
    findings.add(() => ({ pointer: `/events/${i}/time_s`, code: "event_within_dive", parameters }));
  });
  return events?.map(({ time_s, event }) => ({ time_s, event })).sort((a, b) => a.time_s - b.time_s);
}

function sizeOf({ scene, samples, clips, events = [], cardFrames = [] }: TimelinePlan): TimelineSize {
  const length_s = (samples.at(-1)?.time_s ?? 0) - (samples[0]?.time_s ?? 0);
  const sunMoves = scene.daylight_basis === "place_time";
  return {
    nodes: nodesFor(scene.min_depth_m, scene.max_depth_m, length_s, sunMoves),
    judged: clips.length + events.length + 40 * cardFrames.length,
    samples: momentsIn(samples),
  };
}

const shape = () => shapeOf("DiveTimelinesAnswer");

/** The answer in words, in its form. */
function say(
  result: DiveTimelineResult,
  { site, clocks }: { site: object; clocks: Clocks },
  { words, trips }: TripTongue,
  units: TextUnits,
): object {
  const { causes, cautions } = words["dive-advice"];
  const texts = { reasons: trips.timeline, causes, cautions };
  const parts = sayParts(result, texts, units);
  const { sources, min_depth_m: _, max_depth_m: __, moments, clips, marks, ...said } = parts;
  return shape()({
    site,
    ...said,
    moments: moments.map(({ reason, ...moment }) => ({
      ...moment,
      dive_clock: clocks.dive(moment.time_s),
      camera_clock: clocks.camera(moment.time_s),
      reason: sayReason(reason, trips.timeline_moments, units),
    })),
    clips: clips.map(({ reason, ...clip }) => ({
      ...clip,
      from_clock: clocks.camera(clip.from_s),
      to_clock: clocks.camera(clip.to_s),
      reason: sayReason(reason, trips.timeline_clips, units),
    })),
    ...(marks === undefined
      ? {}
      : {
          marks: marks.map(({ reason, ...mark }) => ({
            ...mark,
            reason: sayReason(reason, trips.timeline_marks, units),
          })),
        }),
    model: { version: MODEL_VERSION, sources },
  }) as object;
}
