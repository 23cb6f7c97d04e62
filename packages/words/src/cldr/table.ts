/** How a list is spoken: `{0}` and `{1}` stand for what is joined. */
export interface ListPattern {
  start: string;
  middle: string;
  end: string;
  two: string;
}

/** A number as plural rules look at it (UTS #35, part 3, section 5.1): its value, its whole part, its count of decimals. */
interface PluralOperands {
  n: number;
  i: number;
  v: number;
}

export type UnitName = "m" | "cm" | "mm" | "ft" | "in";

/** What texts need of the Unicode CLDR in one language. `{0}` stands for the number. */
export interface Cldr {
  decimal: string;
  group: string;
  /** Digits that must stand before the first separator. */
  minimumGrouping: number;
  percent: string;
  and: ListPattern;
  or: ListPattern;
  units: Readonly<Record<UnitName, string>>;
  plural: (operands: PluralOperands) => "one" | "other";
}
