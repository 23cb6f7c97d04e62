import { NotOfflineError } from "../core/errors.js";
import type { Input, Operation, Send } from "../core/types.js";
import { Api } from "../generated/api.js";
import { computing, contentOf } from "./compute.js";
import { everyPart } from "./generated/every-part.js";
import type { OfflineOptions } from "./options.js";
import type { OfflinePart } from "./part.js";
import { begin, mayNeed } from "./ready.js";

export { modelVersion } from "./model-version.js";
export type { OfflineOptions } from "./options.js";
export { ready } from "./ready.js";

const partOf = new Map<string, OfflinePart>(Object.values(everyPart).map((part) => [part.source.path, part]));

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
  constructor(options: OfflineOptions = {}) {
    super(computingWith(options));
    mayNeed(Object.values(everyPart));
    begin(options.language);
  }
}

function computingWith(options: OfflineOptions): Send {
  return <T>({ path }: Operation, { body }: Input, call: Parameters<Send>[2]) =>
    computing<T>(async () => {
      const part = partOf.get(path);
      if (part === undefined) throw new NotOfflineError(`Only a service answers ${path}.`);
      return contentOf(part, body, options);
    }, call);
}
