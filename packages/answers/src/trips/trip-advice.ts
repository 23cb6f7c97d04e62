import {
  type FieldError,
  maxErrors,
  type Problem,
  type TripAdviceRequest,
  tripCameraNames,
  wireSchemas,
} from "@sunfathom/contract";
import { MODEL_VERSION, TripProblem, tripAdvice } from "@sunfathom/planner";
import type { ProblemTexts } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest, problem } from "../problem/problem.js";
import { shapeOf } from "../shape/shape.js";
import { checkOf } from "../validate/checker.js";
import { Findings } from "../validate/findings.js";
import type { ReadyTrip, TripSize, TripTongue } from "./ready.js";
import { calendarOf } from "./trip-calendar.js";
import { checkTrip, filterOf } from "./trip-check.js";
import { type ReadPart, type ReadTrip, readTrip } from "./trip-read.js";
import { answerOf, type Saying } from "./trip-say.js";

const fieldNames: ReadonlySet<string> = new Set(Object.keys(wireSchemas.Scene.properties ?? {}));

/** Checks a trip whose shelf is to be handed out, and leaves the computing for later. */
export function tripAdviceReady(raw: unknown, tongue: TripTongue): ReadyTrip<TripSize> | Refused {
  const { problems } = tongue;
  const findings = new Findings();
  checkOf("TripAdviceRequest")(raw, "", findings);
  if (!findings.more && !findings.pointers.includes(""))
    checkTrip(raw as TripAdviceRequest, findings, fieldNames);
  if (!findings.none) return { status: "problem", problem: invalidRequest(findings, problems) };
  const request = raw as TripAdviceRequest;
  const { expect_model_version: expected = MODEL_VERSION, units = "metric" } = request;
  if (expected !== MODEL_VERSION)
    return { status: "problem", problem: otherModel({ expected, is: MODEL_VERSION }, problems) };
  const read = readTrip(request, tongue);
  if ("errors" in read) return { status: "problem", problem: invalid(read.errors, problems) };
  const saying: Saying = { request, read, tongue, units };
  return {
    status: "ready",
    canonical: JSON.stringify([units, read.plan, told(request)]),
    units,
    scene: { filter_fits: fitsIn(read) },
    size: sizeOf(read),
    compute: () => {
      try {
        const result = tripAdvice(read.plan);
        return {
          status: "ok",
          body: shapeOf("TripAdviceAnswer")(answerOf(result, saying)) as object,
          calendar: calendarOf(result, saying),
        };
      } catch (error) {
        if (!(error instanceof TripProblem)) throw error;
        return { status: "problem", problem: outside(error, read) };
      }
    },
  };
}

function invalid(all: readonly FieldError[], words: ProblemTexts): Problem {
  const [first, ...others] = all.slice(0, maxErrors);
  const errors = first === undefined ? [] : [first, ...others];
  return problem(
    "invalid_request",
    words,
    words.details.invalid({ errors, more: all.length > maxErrors }),
    errors,
  );
}

/** What is said beside the plan: names, languages and lengths. */
const told = ({ id, dives, guests, calendar_for }: TripAdviceRequest) => [
  id,
  dives.map(({ name, duration_min }) => [name, duration_min]),
  guests.map(({ language }) => language),
  calendar_for,
];

/** Filters that were found by their pictures: bringing these into one form is what costs before anything is computed. */
const fitsIn = ({ dives, guests, shelf }: ReadTrip): unknown[] =>
  [...dives, ...guests, ...(shelf === undefined ? [] : [shelf])].flatMap(({ ready }) => {
    const { filter_fits = [] } = ready.scene as { filter_fits?: unknown[] };
    return filter_fits;
  });

function sizeOf({ plan: { dives, guests, shelf } }: ReadTrip): TripSize {
  const shared = shelf.map(filterOf);
  const cameras = new Map<string, Set<string>>();
  for (const { camera, kit } of guests) {
    const key = JSON.stringify(camera);
    cameras.set(key, new Set([...(cameras.get(key) ?? shared), ...kit.map(filterOf)]));
  }
  const depths = ({ min_depth_m, max_depth_m }: (typeof dives)[number]["scene"]) =>
    min_depth_m === max_depth_m ? 1 : 3;
  return {
    lights: dives.flatMap(({ scene }) =>
      [...cameras.values()].map((filters) => ({ scene, judged: (filters.size + 1) * depths(scene) })),
    ),
    choices: dives.length * guests.length * shelf.length,
    plans: dives.length * guests.length,
    clockYears: new Set(dives.map(({ time_zone, local_time }) => `${time_zone} ${local_time.slice(0, 4)}`))
      .size,
    fits: guests.reduce(
      (sum, { mount, kit }) => sum + (mount === undefined ? 0 : shelf.length + kit.length),
      0,
    ),
  };
}

/** What the model has no answer for, told of the trip. */
function outside({ problem: inner, place }: TripProblem, { dives, guests, shelf }: ReadTrip): Problem {
  const { piece, guest, dive } = place;
  const of = (part: ReadPart | undefined): Problem => {
    if (part === undefined) throw inner;
    const refused = part.ready.refuse(inner).problem;
    const errors = (refused.errors ?? []).map((error) => ({ ...error, pointer: part.place(error.pointer) }));
    return { ...refused, errors };
  };
  if (piece !== undefined) {
    const { errors = [], ...rest } = of(piece.from === "shelf" ? shelf : guests[guest ?? -1]);
    const list = piece.from === "shelf" ? "/shelf" : `/guests/${guest}/kit`;
    return {
      ...rest,
      errors: errors.map((error) => ({ ...error, pointer: `${list}/${piece.at}/filter_transmittance` })),
    };
  }
  const isOfCamera = dive === undefined || (tripCameraNames as readonly string[]).includes(inner.field);
  return of(isOfCamera ? guests[guest ?? -1] : dives[dive]);
}
