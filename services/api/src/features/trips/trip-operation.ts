import type { ReadyTrip, TripTongue } from "@sunfathom/answers";
import type { ComponentName, Problem } from "@sunfathom/contract";
import type { TripForm } from "./trip-form.js";

/** What something that plans more than one dive, or more than one hour, says of itself. */
interface About {
  /** Last part of its path. */
  name: string;
  operationId: string;
  summary: string;
  description: string;
  /** Component that the body keeps. */
  request: ComponentName;
  /** Component that the answer keeps. */
  answer: ComponentName;
  examples: Readonly<Record<string, { summary: string; value: object }>>;
  /** What the answer comes in, the usual form first. */
  forms: readonly [TripForm, ...TripForm[]];
  /** Takes as much of a body as a batch does. */
  isLarge?: boolean;
}

/** A plan that is valid, and what it costs in units of the budget. */
type PricedTrip = Omit<ReadyTrip<unknown>, "size"> & { cost: number };

type Refused = { status: "problem"; problem: Problem };

/** What plans more than one dive, or more than one hour, from a body. */
export interface TripOperation extends About {
  prepare: (raw: unknown, tongue: TripTongue) => PricedTrip | Refused;
}

/** Makes an operation of what checks a body and what knows the price of what it finds. */
export function tripOperation<Size>({
  prepare,
  cost,
  ...about
}: About & {
  prepare: (raw: unknown, tongue: TripTongue) => ReadyTrip<Size> | Refused;
  cost: (ready: ReadyTrip<Size>) => number;
}): TripOperation {
  return {
    ...about,
    prepare: (raw, tongue) => {
      const ready = prepare(raw, tongue);
      return ready.status === "ready" ? { ...ready, cost: cost(ready) } : ready;
    },
  };
}
