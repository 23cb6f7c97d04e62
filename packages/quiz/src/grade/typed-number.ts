/** A number as people type it: with a decimal point or comma, a sign, blanks between thousands, and its unit or none. */
import type { QuizRefusals } from "@sunfathom/words";

type Hint = Extract<
  QuizRefusals["response_malformed"],
  { case: "not_a_number" | "number_ambiguous" | "other_unit" }
>;

/** What may stand for a unit, in lower case; the first is how it is written. */
const WRITTEN: Readonly<Record<string, readonly string[]>> = {
  stops: ["stops", "stop", "ev", "f-stops", "f-stop", "pasos", "paso"],
  m: ["m", "metre", "metres", "meter", "meters", "metros", "metro"],
  mm: [
    "mm",
    "millimetre",
    "millimetres",
    "millimeter",
    "millimeters",
    "milímetros",
    "milímetro",
    "milimetros",
    "milimetro",
  ],
  K: ["k", "kelvin"],
  mired: ["mired", "mireds"],
  "%": ["%", "percent", "per cent", "por ciento"],
  "°": ["°", "deg", "degree", "degrees", "grados", "grado"],
};

/** What may stand before or behind a bare number. */
const BARE = ["", "iso", "density", "densidad", "nd"];

const NUMBER = /^([-+\u2212]?)(\d[\d\s\u00a0\u202f']*)(?:([.,])(\d+))?/;

/**
 * @param unit that the question asks for; empty for a bare number
 * @param thousands signs that may set thousands off, too
 * @returns the number, or why there is none
 */
export function readNumber(
  typed: string,
  unit: string,
  thousands: readonly string[] = [","],
): { value: number } | { hint: Hint } {
  const cleaned = typed
    .trim()
    .replace(/^(?:iso|density|densidad|nd|≈|~|=|about|unos|unas|x\s*=)\s*/i, "")
    .replace(/^([-+\u2212]?)(?=[.,]\d)/, "$10");
  const found = NUMBER.exec(cleaned);
  if (found === null) return { hint: { case: "not_a_number" } };
  const [all, sign = "", whole = "", mark, decimals] = found;
  const digits = whole.replace(/\D/g, "");
  const behind = cleaned.slice(all.length).trim().toLowerCase();
  // 1,250 may be meant as more than a thousand; 0,250 may not.
  const grouped = thousands.includes(mark ?? "") && decimals?.length === 3 && !/^0+$/.test(digits);
  if (grouped || /^[.,]/.test(behind)) return { hint: { case: "number_ambiguous", typed: typed.trim() } };
  const known = unit === "" ? BARE : ["", ...(WRITTEN[unit] ?? [unit.toLowerCase()])];
  if (!known.includes(behind)) return { hint: { case: "other_unit", typed: typed.trim(), unit } };
  const value = Number(`${sign === "" || sign === "+" ? "" : "-"}${digits}.${decimals ?? "0"}`);
  return Number.isFinite(value) ? { value } : { hint: { case: "not_a_number" } };
}
