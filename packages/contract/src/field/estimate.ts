import { z } from "zod/v3";
import { annotate } from "./annotation.js";
import { type QuantitySpec, quantity } from "./quantity.js";

type EstimateSpec = Pick<QuantitySpec, "unit" | "min" | "max"> & {
  decimals: number;
  what: string;
  example: readonly [number, number, number];
};

/** A quantity with its spread. */
export function estimate({ what, example: [low, likely, high], ...spec }: EstimateSpec) {
  return annotate(
    z
      .object({
        low: quantity({ ...spec, description: "10th percentile.", example: low }),
        likely: quantity({ ...spec, description: "50th percentile.", example: likely }),
        high: quantity({ ...spec, description: "90th percentile.", example: high }),
      })
      .describe(`${what}, as percentiles of what it may be.`),
    { examples: [{ low, likely, high }] },
  );
}
