import {
  answer,
  modelVersion as builtInVersion,
  calculations,
  readReference,
  references,
} from "@sunfathom/answers";
import { callOf, type Done } from "../core/call.js";
import { AbortedError, NotOfflineError } from "../core/errors.js";
import { problemError } from "../core/problem.js";
import type { CallOptions, Input, Operation, Send } from "../core/types.js";
import { withModelVersion } from "../core/with-model-version.js";
import { Api } from "../generated/api.js";

/**
 * Version of the model that this package computes with. The service says its own in every answer, as `model.version`.
 * @example
 * const client = new Sunfathom({ baseUrl, expectModelVersion: modelVersion });
 */
export const modelVersion: string = builtInVersion;

/** What holds for every call of an offline client. */
export interface OfflineOptions {
  /** Take answers of this version of the model and no other; the one that is here is `modelVersion`. */
  expectModelVersion?: string | undefined;
}

/**
 * The same calls as `Sunfathom`, computed here: no network, no service. For the same scene and version of the model,
 * answers and problems are those of the service to the byte. What only a service can say, such as its health, fails
 * with `NotOfflineError`. A call computes on the thread that makes it; on a page, a worker keeps the page responsive.
 * @example
 * const client = new OfflineSunfathom();
 * const choice = await client.calculations.filterChoice({ water_type: "IB", depth_m: 12 });
 * console.log(choice.filter_kind, choice.filter_density);
 */
export class OfflineSunfathom extends Api {
  constructor({ expectModelVersion }: OfflineOptions = {}) {
    super(computing(expectModelVersion));
  }
}

function computing(expectModelVersion: string | undefined): Send {
  return <T>(operation: Operation, input: Input, options: CallOptions = {}) =>
    callOf<T>(compute(operation, withModelVersion(operation, input, expectModelVersion), options));
}

async function compute<T>(operation: Operation, { body }: Input, options: CallOptions): Promise<Done<T>> {
  // Leaves the caller the time to abort, as a request would.
  await undefined;
  if (options.signal?.aborted) throw new AbortedError(options.signal.reason);
  return { data: contentOf(operation, body) as T, meta: { source: "offline", attempts: 1 } };
}

function contentOf({ path }: Operation, body: object | undefined): object {
  const reference = references.find((entry) => entry.path === path);
  if (reference !== undefined) return asReceived(readReference(reference));
  const calculation = calculations.find((entry) => entry.path === path);
  if (calculation === undefined) throw new NotOfflineError(`Only a service answers ${path}.`);
  const answered = answer(calculation.name, asReceived(body));
  if (answered.status === "ok") return asReceived(answered.body);
  throw problemError(answered.problem, answered.problem);
}

/** What is left of a value after its way through JSON: `undefined` is absent, and nothing is shared with the caller. */
function asReceived<T>(value: T): T {
  const text: string | undefined = JSON.stringify(value);
  // Of a scene that is no object at all, a service would receive nothing either.
  return text === undefined ? value : JSON.parse(text);
}
