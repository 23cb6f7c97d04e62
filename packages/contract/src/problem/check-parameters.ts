/** What each error of a value that its schema refuses comes with: what its text is made of, beside names that need none. */
export interface CheckParameters {
  unknown_field:
    | { name: string }
    /** It was sent in another unit than the field takes: `value` in `from_unit` is `converted` in `to_unit`. */
    | {
        name: string;
        field: string;
        value: number;
        from_unit: string;
        to_unit: string;
        converted: number;
      };
  missing_field: { name: string; needed: readonly string[] };
  wrong_type: { found: JsonTypeFound; wanted: WantedType };
  out_of_range: NumberRange & { value: number };
  not_whole: NumberRange & { value: number };
  not_an_option: { options: readonly string[] };
  wrong_length: { of: "text" | "list"; length: number; min_length: number; max_length?: number };
  wrong_form: { example: string };
}

export type CheckCode = keyof CheckParameters;

/** What a number may be. `unit` is absent for bare numbers. */
export interface NumberRange {
  minimum: number;
  maximum: number;
  unit?: string;
  whole: boolean;
}

type JsonTypeFound =
  | "null"
  | "list"
  | "object"
  | "number"
  | "not_a_finite_number"
  | "text"
  | "boolean"
  | "no_json";

export type WantedType =
  | { type: "list" | "object" | "text" | "boolean" }
  | ({ type: "number" } & NumberRange)
  | { type: "option"; options: readonly string[] };
