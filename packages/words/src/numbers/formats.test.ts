// The tables against the CLDR that this engine carries. Other kinds of blank are let pass: they are of other years.
import { describe, expect, it } from "vitest";
import { de } from "../cldr/de.js";
import { en } from "../cldr/en.js";
import { es } from "../cldr/es.js";
import { fr } from "../cldr/fr.js";
import { formatsOf } from "./formats.js";

/** No minus before 0. The library of types is older than this word. */
const signDisplay = "negative" as "auto";
const blanks = (text: string): string => text.replace(/[\u00a0\u202f]/g, " ");
const numbers = [0, 0.04, -0.04, 0.5, 1, 1.5, 1.96, 2, 7, 12.25, 999, 1000, 9999, 10_000, 1_234_567];
const words = ["a", "b", "c", "d", "e"];

describe.each(Object.entries({ en, de, es, fr }))("numbers in %s", (language, table) => {
  const formats = formatsOf(table);

  it.each([0, 1, 2])("are written as Intl writes them, with %d decimals", (decimals) => {
    const fixed = { minimumFractionDigits: decimals, maximumFractionDigits: decimals } as const;
    const plain = new Intl.NumberFormat(language, { ...fixed, useGrouping: false, signDisplay });
    for (const value of numbers) {
      const rounded = Number(value.toFixed(decimals));
      expect(formats.shown(value, decimals)).toBe(plain.format(rounded));
      expect(blanks(formats.percent(value, decimals)).replace(/^-0(?!.*[1-9])/, "0")).toBe(
        blanks(
          new Intl.NumberFormat(language, {
            ...fixed,
            style: "percent",
            useGrouping: false,
            signDisplay,
          }).format(rounded / 100),
        ),
      );
    }
  });

  it("have their thousands set off where Intl does", () => {
    const intl = new Intl.NumberFormat(language, { maximumFractionDigits: 0 });
    for (const value of numbers.filter(Number.isInteger))
      expect(blanks(formats.grouped(value))).toBe(blanks(intl.format(value)));
  });

  it("take the plural that Intl gives them", () => {
    const forms = { one: "one", other: "other" };
    for (const decimals of [0, 1]) {
      const rules = new Intl.PluralRules(language, { minimumFractionDigits: decimals });
      for (const value of numbers.filter((number) => number >= 0 && number < 1_000_000)) {
        const rounded = Number(value.toFixed(decimals));
        expect(formats.plural(value, forms, decimals), `${value}`).toBe(rules.select(rounded));
      }
    }
  });

  it.each(["m", "cm", "mm", "ft", "in"] as const)("have their unit as Intl writes it: %s", (name) => {
    const units = { m: "meter", cm: "centimeter", mm: "millimeter", ft: "foot", in: "inch" };
    const intl = new Intl.NumberFormat(language, { style: "unit", unit: units[name], unitDisplay: "short" });
    expect(blanks(formats.unit("12", name))).toBe(blanks(intl.format(12)));
  });

  it.each([0, 1, 2, 3, 5])("and lists of %d are joined as Intl joins them", (count) => {
    const list = words.slice(0, count);
    const intl = (type: "conjunction" | "disjunction") =>
      new Intl.ListFormat(language, { type }).format(list);
    expect(formats.spoken(list)).toBe(intl("conjunction"));
    expect(formats.either(list)).toBe(intl("disjunction"));
  });
});
