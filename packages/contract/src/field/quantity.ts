import { z } from "zod/v3";
import { annotate } from "./annotation.js";

/** Units of the wire, after the names that end in them; `1` for a number without one. */
type Unit =
  | "1"
  | "1/m"
  | "%"
  | "bit"
  | "deg"
  | "EV"
  | "K"
  | "lm"
  | "lx"
  | "m"
  | "m/s"
  | "mg/m3"
  | "min"
  | "mm"
  | "g"
  | "nm"
  | "okta"
  | "px"
  | "s"
  | "stop";

export interface QuantitySpec {
  description: string;
  unit: Unit;
  /** Least and greatest value, both allowed. */
  min: number;
  max: number;
  example: number;
  /** Whole numbers only. */
  integer?: boolean;
  /** For what a caller may leave out. */
  default?: number;
  /** For what an answer holds: decimals that it is rounded to. */
  decimals?: number;
}

/** A number with its unit, range and example, all of which its description repeats for a human reader. */
export function quantity(spec: QuantitySpec): z.ZodNumber {
  const { unit, decimals, min, max, example } = spec;
  const number = z.number().min(min).max(max);
  return annotate((spec.integer ? number.int() : number).describe(describe(spec)), {
    unit,
    ...(decimals === undefined ? {} : { decimals }),
    ...(spec.default === undefined ? {} : { default: spec.default }),
    examples: [example],
  });
}

/** A list of numbers of one kind, for example one per wavelength. */
export function quantityList(
  spec: QuantitySpec & { minItems: number; maxItems: number; examples: readonly number[] },
): z.ZodArray<z.ZodNumber> {
  return annotate(z.array(quantity(spec)).min(spec.minItems).max(spec.maxItems).describe(spec.description), {
    examples: [spec.examples],
  });
}

function describe(spec: QuantitySpec): string {
  const unit = spec.unit === "1" ? "" : ` ${spec.unit}`;
  const sentences = [
    spec.description,
    `${spec.integer ? "Whole number, " : ""}${spec.min} to ${spec.max}${unit}.`,
    ...(spec.default === undefined ? [] : [`Default ${spec.default}${unit}.`]),
  ];
  return sentences.join(" ");
}
