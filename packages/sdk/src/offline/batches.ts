import { type BatchPlan, checkBatchHere, sceneAt } from "@sunfathom/answers";
import type { Batches, BatchResults, RunBatch } from "../core/batches.js";
import { AbortedError, NotOfflineError } from "../core/errors.js";
import { ProblemError } from "../core/response-errors.js";
import { expecting } from "../core/with-model-version.js";
import { contentOf } from "./compute.js";
import type { OfflineOptions } from "./options.js";
import type { OfflinePart } from "./part.js";
import { begin, brought, later, mayNeed, mayNeedAlso } from "./ready.js";

/** How long a batch computes before others on its thread have their turn, ms: a page draws sixty times a second. */
const turn_ms = 12;

const refusals = () => import("./batch-refusal.js");

/**
 * Batches without a service, of the calculations that they are made from, and no others: a page that bundles it carries no others
 * either. Answers and problems are those of the service, one scene after the other in the order of the batch.
 * @example
 * const batches = batchesWith([filterChoice]);
 * const week = { operation: "filter-choice", scene: { water_type: "IB" }, vary: [{ depth_m: [5, 10, 20] }] } as const;
 * for await (const { id, answer } of batches.run(week)) console.log(id, answer?.filter_kind);
 */
export function batchesWith(parts: readonly OfflinePart[], options: OfflineOptions = {}): Batches {
  const partOf = new Map(parts.map((part) => [part.source.path, part]));
  mayNeed(parts);
  mayNeedAlso(refusals);
  begin(options.language);
  return { run: runHere(partOf, options) };
}

const runHere = (partOf: ReadonlyMap<string, OfflinePart>, options: OfflineOptions): RunBatch =>
  async function* (batch, { signal, fields } = {}): BatchResults<never> {
    await undefined;
    if (fields === "brief") throw new NotOfflineError("Only a service answers in brief.");
    const plan = await planHere(batch, options);
    const forScenes = { ...options, language: plan.language ?? options.language };
    const counts = { answers: 0, problems: 0 };
    let since_ms = Date.now();
    const partFor = (name: string): OfflinePart => {
      const part = partOf.get(`/v1/${name}`);
      if (part === undefined) throw new NotOfflineError(`${name} is none of the parts that are here.`);
      return part;
    };
    const names = plan.kind === "items" ? plan.items.map(({ operation }) => operation) : [plan.operation];
    for (const name of new Set(names)) partFor(name);
    for (let index = 0; index < plan.size; index += 1) {
      if (Date.now() - since_ms > turn_ms) {
        await new Promise((resolve) => setTimeout(resolve, 0));
        since_ms = Date.now();
      }
      if (signal?.aborted) throw new AbortedError(signal.reason);
      const { id, at, operation, scene } = sceneAt(plan, index);
      const whose = { id, ...(at === undefined ? {} : { at: [...at] }) };
      try {
        const answer = await contentOf(partFor(operation), JSON.parse(scene), forScenes);
        counts.answers += 1;
        yield { ...whose, answer: answer as never };
      } catch (error) {
        if (!(error instanceof ProblemError)) throw error;
        counts.problems += 1;
        yield { ...whose, problem: error };
      }
    }
    return { items: plan.size, ...counts, left: 0, cost: 0 };
  };

/** @throws ProblemError where the batch itself is wrong */
async function planHere(
  batch: object,
  { expectModelVersion: version, language = "en" }: OfflineOptions,
): Promise<BatchPlan> {
  const received = JSON.stringify(version === undefined ? batch : expecting(version, batch));
  const checked = checkBatchHere(received === undefined ? undefined : JSON.parse(received));
  if ("plan" in checked) return checked.plan;
  const { textsIn } = await later();
  const { language: asked } = Object(batch) as { language?: unknown };
  const tongue = await textsIn(asked, language);
  const isOne = asked === "en" || asked === "de" || asked === "es" || asked === "fr";
  const { batchRefusalError } = await brought(refusals);
  throw batchRefusalError(checked, isOne ? asked : language, tongue?.problems);
}
