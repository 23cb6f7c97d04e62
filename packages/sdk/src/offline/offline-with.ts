import type { ApiOf } from "../core/api-of.js";
import type { CallOptions } from "../core/types.js";
import { computing, contentOf } from "./compute.js";
import type { OfflineOptions } from "./options.js";
import type { OfflineName, OfflinePart } from "./part.js";
import { begin, mayNeed } from "./ready.js";

/**
 * A client without a service that has the calculations it is made from, and no others: a page that bundles it carries no others
 * either. Each call is the one of `OfflineSunfathom`, with the same answers and errors.
 * @example
 * const boat = offlineWith([filterChoice, exposureLoss]);
 * const choice = await boat.calculations.filterChoice({ water_type: "IB", depth_m: 12 });
 * console.log(choice.filter_kind, choice.filter_density);
 */
export function offlineWith<Name extends OfflineName>(
  parts: Parts<Name>,
  options: OfflineOptions = {},
): ApiOf<Name> {
  const client: Record<string, Record<string, Method>> = {};
  for (const part of parts) {
    client[part.group] = { ...client[part.group], [part.name]: methodOf(part, options) };
  }
  mayNeed(parts);
  // Reference data refuse nothing.
  if (parts.some(({ group }) => group === "calculations")) begin(options.language);
  // What it has depends on the names of its parts, which the compiler knows and this loop does not.
  return client as object as ApiOf<Name>;
}

/** At least one, so that the compiler knows which. */
type Parts<Name extends OfflineName> = readonly [OfflinePart<Name>, ...OfflinePart<Name>[]];

type Method = (...args: never[]) => unknown;

function methodOf(part: OfflinePart, options: OfflineOptions): Method {
  return part.group === "calculations"
    ? (scene: object, call?: CallOptions) => computing(() => contentOf(part, scene, options), call)
    : (call?: CallOptions) => computing(() => contentOf(part, undefined, options), call);
}
