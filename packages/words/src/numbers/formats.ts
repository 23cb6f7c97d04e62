import type { Cldr, ListPattern, UnitName } from "../cldr/table.js";

const fill = (pattern: string, first: string, second = ""): string =>
  pattern.replace(/\{([01])\}/g, (_, place: string) => (place === "0" ? first : second));

/** Numbers and lists as a language writes them. No engine's own `Intl` is asked: they differ. */
export interface Formats {
  /** A number with a fixed count of decimals; -0 never shows. Thousands are not set off: dials do not either. */
  shown(value: number, decimals?: number): string;
  /** A whole number, thousands set off. */
  grouped(value: number): string;
  percent(value: number, decimals?: number): string;
  /** A number, or several, that are written already, with their unit. */
  unit(text: string, name: UnitName): string;
  /** "one, two and three" */
  spoken(all: readonly string[]): string;
  /** "one, two or three" */
  either(all: readonly string[]): string;
  /** What goes with a number as it is shown. */
  plural(value: number, forms: { one: string; other: string }, decimals?: number): string;
}

/** A whole number with a sign between its digits, three by three from the end. */
function inThrees(text: string, sign: string): string {
  const start = text.startsWith("-") ? 1 : 0;
  const groups: string[] = [];
  for (let end = text.length; end > start; end -= 3)
    groups.unshift(text.slice(Math.max(start, end - 3), end));
  return text.slice(0, start) + groups.join(sign);
}

export function formatsOf({ decimal, group, minimumGrouping, ...table }: Cldr): Formats {
  const shown = (value: number, decimals = 0): string => {
    const text = value.toFixed(decimals);
    const plain = Number(text) === 0 ? (0).toFixed(decimals) : text;
    return decimal === "." ? plain : plain.replace(".", decimal);
  };
  const grouped = (value: number): string => {
    const text = shown(value);
    const digits = text.replace("-", "").length;
    return digits < 3 + minimumGrouping ? text : inThrees(text, group);
  };
  const joined =
    ({ start, middle, end, two }: ListPattern) =>
    (all: readonly string[]): string => {
      const [first = "", second] = all;
      if (second === undefined) return first;
      if (all.length === 2) return fill(two, first, second);
      const last = all.length - 1;
      const begun = all
        .slice(1, last)
        .reduce((text, item, index) => fill(index === 0 ? start : middle, text, item), first);
      return fill(end, begun, all[last] ?? "");
    };
  return {
    shown,
    grouped,
    percent: (value, decimals) => fill(table.percent, shown(value, decimals)),
    unit: (text, name) => fill(table.units[name], text),
    spoken: joined(table.and),
    either: joined(table.or),
    plural: (value, forms, decimals = 0) => {
      const n = Math.abs(Number(value.toFixed(decimals)));
      return forms[table.plural({ n, i: Math.trunc(n), v: decimals })];
    },
  };
}
