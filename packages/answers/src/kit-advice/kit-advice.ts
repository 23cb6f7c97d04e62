import { type FieldError, type KitAdviceRequest, regretLimit_delta_e00 } from "@sunfathom/contract";
import {
  DiveProblem,
  type KitAdviceResult,
  type KitItem,
  type KitPlan,
  kitAdvice,
  MODEL_VERSION,
  type Scene,
} from "@sunfathom/planner";
import type { TextUnits } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { sayParts, sayReason } from "../say/say-parts.js";
import { shapeOf } from "../shape/shape.js";
import type { ReadyTrip, TripTongue } from "../trips/ready.js";
import { checkOf } from "../validate/checker.js";
import { Findings } from "../validate/findings.js";
import { checkKit } from "./check.js";
import { divesOf, type ReadyDive } from "./dives.js";
import { type Asked, byId, filterPointer, filtersSeenBy, kitOf, ofFilters, piecesOf } from "./pieces.js";

/** What tells how long a kit takes. */
export interface KitSize {
  /** The scene of each dive, in its one form. */
  scenes: readonly object[];
  filters: number;
  /** Of lens filters, how many differ in what they need to be held. */
  sizes: number;
  lampFilters: number;
  lights: number;
  rings: number;
}

type Piece = Asked<KitAdviceRequest["pieces"][number]>;

/** Checks what a kit is sought for, and leaves the computing for later. */
export function kitAdviceReady(raw: unknown, tongue: TripTongue): ReadyTrip<KitSize> | Refused {
  const { problems } = tongue;
  const refuse = (findings: Findings): Refused => ({
    status: "problem",
    problem: invalidRequest(findings, problems),
  });
  const findings = new Findings();
  checkOf("KitAdviceRequest")(raw, "", findings);
  if (!findings.more && !findings.pointers.includes("")) checkKit(raw as KitAdviceRequest, findings);
  if (!findings.none) return refuse(findings);
  const request = raw as KitAdviceRequest;
  const { expect_model_version: expected = MODEL_VERSION, units = "metric", scene = {} } = request;
  if (expected !== MODEL_VERSION)
    return { status: "problem", problem: otherModel({ expected, is: MODEL_VERSION }, problems) };
  const pieces = byId(request.pieces);
  const told = piecesOf(pieces, tongue);
  const dives = divesOf(scene, byId(request.dives), tongue);
  const seen = filtersSeenBy({}, pieces, tongue);
  const errors: FieldError[] = [
    ...(seen.status === "problem" ? ofFilters(pieces, seen.problem.errors ?? []) : []),
    ...("errors" in told ? told.errors : []),
    ...("errors" in dives ? dives.errors : []),
  ];
  if (errors.length > 0 || "errors" in told || "errors" in dives || seen.status === "problem")
    return refuse(new Findings(errors));
  const kits = new Map<string, KitItem[]>([["{}", kitOf(seen)]]);
  const scenes = dives.dives.map(({ ready }) => withKit(ready.scene as Scene, pieces, kits, tongue));
  const limit = request.regret_limit_delta_e00;
  const plan: KitPlan = {
    dives: scenes.map((scene, nth) => ({ id: dives.dives[nth]?.id ?? "", scene })) as KitPlan["dives"],
    pieces: told.pieces as KitPlan["pieces"],
    regret_limit_delta_e00: limit ?? regretLimit_delta_e00.usual,
    limit_is_own: limit !== undefined,
  };
  return {
    status: "ready",
    canonical: JSON.stringify([units, dives.dives.map(({ ready }) => ready.canonical), plan]),
    units,
    scene: seen.scene,
    size: sizeOf(plan),
    compute: () => {
      try {
        return { status: "ok", body: say(kitAdvice(plan), dives.dives, tongue, units) };
      } catch (error) {
        if (!(error instanceof DiveProblem)) throw error;
        return outside(error, dives.dives, pieces);
      }
    },
  };
}

/** A dive with the filters as its camera finds them: worked out once for each camera. */
function withKit(
  scene: Scene,
  pieces: readonly Piece[],
  kits: Map<string, KitItem[]>,
  tongue: TripTongue,
): Scene {
  const { sensor_samples } = scene;
  const sensor = sensor_samples === undefined ? {} : { sensor_samples };
  const key = JSON.stringify(sensor);
  let kit = kits.get(key);
  if (kit === undefined) {
    const seen = filtersSeenBy(sensor, pieces, tongue);
    // Filters and sensor have each passed their rules before.
    if (seen.status === "problem") throw new Error(seen.problem.detail);
    kit = kitOf(seen);
    kits.set(key, kit);
  }
  return kit.length > 0 ? { ...scene, kit } : scene;
}

function sizeOf({ dives, pieces }: KitPlan): KitSize {
  const count = (wanted: string) => pieces.filter(({ item }) => item === wanted).length;
  return {
    scenes: dives.map(({ scene }) => scene),
    filters: count("lens_filter"),
    sizes: new Set(
      pieces.flatMap((piece) => {
        if (piece.item !== "lens_filter") return [];
        const { id: _, ...size } = piece;
        return [JSON.stringify(size)];
      }),
    ).size,
    lampFilters: count("lamp_filter"),
    lights: count("lamp"),
    rings: count("ring"),
  };
}

/** A dive that the model has no answer for: filters and lights are told of by their piece. */
function outside(
  { dive, problem }: DiveProblem,
  dives: readonly ReadyDive[],
  pieces: readonly Piece[],
): Refused {
  const found = dives[dive];
  if (found === undefined) throw problem;
  const { problem: inner } = found.ready.refuse(problem);
  const errors = (inner.errors ?? []).map((error) => ({
    ...error,
    pointer: /^\/(kit|lamps)\b/.test(error.pointer)
      ? filterPointer(pieces, error.pointer)
      : found.pointerOf(error.pointer),
  }));
  return { status: "problem", problem: { ...inner, errors } };
}

const shape = () => shapeOf("KitAdviceAnswer");

/** The answer in words, in its form. */
function say(
  result: KitAdviceResult,
  dives: readonly ReadyDive[],
  { words, trips }: TripTongue,
  units: TextUnits,
): object {
  const { causes, cautions } = words["filter-choice"];
  const texts = {
    reasons: trips.kit_advice,
    causes,
    cautions: { ...cautions, ...words["filter-mounting"].cautions },
  };
  const { sources, pieces, dives: onDives, ...said } = sayParts(result, texts, units);
  return shape()({
    ...said,
    dives: onDives.map((dive, nth) => ({ ...dive, scene: JSON.parse(dives[nth]?.ready.canonical ?? "{}") })),
    pieces: pieces.map(({ reason, ...piece }) => ({
      ...piece,
      reason: sayReason(reason, texts.reasons, units),
    })),
    model: { version: MODEL_VERSION, sources },
  }) as object;
}
