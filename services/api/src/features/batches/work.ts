import {
  type BatchPlan,
  type BatchScene,
  type Operation,
  planBatch,
  toBytes,
  toJson,
} from "@sunfathom/answers";
import type { CalculationName, Problem } from "@sunfathom/contract";
import { costOfCalculation, costOfErrors } from "../../compute/cost.js";
import { defaultLimits } from "../../config/limits.js";
import { type FieldsReader, fieldsReader, type Part } from "../../http/asked/fields-asked.js";
import { languageIn } from "../../http/asked/language.js";
import { sizeOf } from "../../http/sent/errors.js";
import { refusal } from "../../http/sent/refusals.js";
import { withRequestId } from "../../http/sent/send-problem.js";
import { bytesPerUnit } from "../../limiting/limiter.js";
import { fieldsOf } from "../../openapi/components.js";
import { operationIn, type Tongue, tongueOf } from "../../tongues.js";
import type { Slice, SliceDone } from "./slice.js";

/** Lines that are handed over at once: more would wait in memory for a slow reader. */
const mostBytes = 64 * 1024;

/** Characters of a scene: no more than the body of one alone may have bytes. */
const longestScene = defaultLimits.bodyBytes;

/** Checks a batch as a whole. */
export function planOf(raw: unknown, { problems, operations }: Tongue): ReturnType<typeof planBatch> {
  const planned = planBatch(raw, problems, (name) => {
    const operation = operations.find((one) => one.name === name);
    return operation === undefined ? [] : fieldsOf(operation.request).map(([field]) => field);
  });
  return "problem" in planned ? planned : { plan: withoutExcess(planned.plan) };
}

/** What is too long is only ever refused, which its beginning is enough for: one part of `vary` goes into ten thousand scenes. */
function withoutExcess(plan: BatchPlan): BatchPlan {
  const cut = (text: string) => text.slice(0, longestScene + 1);
  return plan.kind === "items"
    ? { ...plan, items: plan.items.map((item) => ({ ...item, scene: cut(item.scene) })) }
    : { ...plan, common: cut(plan.common), entries: plan.entries.map((parts) => parts.map(cut)) };
}

/**
 * Works on scenes one after the other, until all are done, what is paid is spent or there is enough to hand over. Each gets the
 * answer or the problem of its operation alone.
 * @throws whatever a checkpoint throws
 * @param stopped whether an error says that nobody waits any more
 */
export function workOn(slice: Slice, stopped: (error: unknown) => boolean): SliceDone {
  const pieces: Uint8Array[] = [];
  const done = { answers: 0, problems: 0, cost: 0, failures: [] as string[] };
  let bytes = 0;
  let next: number | undefined;
  for (const scene of slice.scenes) {
    if (bytes > mostBytes) break;
    const begun = begin(scene, slice);
    if (done.cost + begun.cost > slice.allowance) {
      next = begun.cost;
      break;
    }
    done.cost += begun.cost;
    const line = lineOf(scene, begun, slice, (error) => {
      if (stopped(error)) throw error;
      done.failures.push(error instanceof Error ? (error.stack ?? error.message) : String(error));
    });
    done[line.kind] += 1;
    for (const piece of line.pieces) {
      pieces.push(piece);
      bytes += piece.length;
    }
  }
  return { status: "batch", bytes: Uint8Array.from(Buffer.concat(pieces)), ...done, next };
}

interface Begun {
  tongue: Tongue;
  prepared: ReturnType<Operation["prepare"]>;
  part: Part | undefined;
  cost: number;
}

/** Checks a scene, which tells what its answer will cost: as much as a request that has it for its body. */
function begin({ operation: name, scene: text }: BatchScene, { language, query }: Slice): Begun {
  const reading = Math.floor(text.length / bytesPerUnit);
  if (text.length > longestScene) return tooLong(tongueOf(language), 1 + reading);
  const scene: unknown = JSON.parse(text);
  const tongue = tongueOf(languageIn(scene) ?? language);
  const operation = operationIn(tongue, name);
  const prepared = operation.prepare(scene);
  const own =
    prepared.status === "problem" ? costOfErrors(prepared.problem) : costOfCalculation(name, prepared.scene);
  const { part } = readerOf(operation)(query, tongue.problems.fields);
  return { tongue, prepared, part, cost: 1 + reading + own };
}

/** The scene alone would not have been read either. */
function tooLong(tongue: Tongue, cost: number): Begun {
  const problem = refusal({ because: "body_too_long", most: sizeOf(longestScene) }, tongue.problems);
  return { tongue, prepared: { status: "problem", problem }, part: undefined, cost };
}

const readers = new Map<CalculationName, FieldsReader>();

/** One for each calculation: what it reads has the same names in every language. */
export function readerOf(operation: Operation): FieldsReader {
  const reader = readers.get(operation.name) ?? fieldsReader(operation);
  readers.set(operation.name, reader);
  return reader;
}

interface Line {
  kind: "answers" | "problems";
  pieces: Uint8Array[];
}

function lineOf(
  scene: BatchScene,
  { prepared, part, tongue }: Begun,
  { requestId }: Slice,
  failed: (error: unknown) => void,
): Line {
  try {
    const answered = prepared.status === "problem" ? prepared : prepared.compute();
    if (answered.status === "problem") return problemLine(scene, answered.problem, requestId);
    // A copy: the next answer is written to the same place.
    const whole = Uint8Array.from(toBytes(answered));
    return { kind: "answers", pieces: [head(scene, "answer"), part?.of(whole) ?? whole, end] };
  } catch (error) {
    failed(error);
    return problemLine(scene, refusal({ because: "internal" }, tongue.problems), requestId);
  }
}

/** The line of a scene that has no answer. */
export function problemLine(scene: BatchScene, problem: Problem, requestId: string): Line {
  const body = Buffer.from(toJson(withRequestId(problem, requestId)));
  return { kind: "problems", pieces: [head(scene, "problem"), body, end] };
}

const head = ({ id, at }: BatchScene, kind: "answer" | "problem"): Buffer =>
  Buffer.from(`${JSON.stringify({ kind, id, ...(at === undefined ? {} : { at }) }).slice(0, -1)},"${kind}":`);

const end = Buffer.from("}\n");
