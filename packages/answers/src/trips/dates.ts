import type { Findings } from "../validate/findings.js";

const firstYear = 1900;
const lastYear = 2100;
const day_ms = 86_400_000;

/** Milliseconds at which a day begins in UTC; undefined where the calendar has no such day. */
function dayOf(date: string): number | undefined {
  const at = Date.parse(`${date}T00:00:00Z`);
  const year = Number(date.slice(0, 4));
  return Number.isNaN(at) ||
    !new Date(at).toISOString().startsWith(date) ||
    year < firstYear ||
    year > lastYear
    ? undefined
    : at;
}

/** Notes a day that there is not. @returns whether there is one */
export function checkDate(date: string, pointer: string, findings: Findings): boolean {
  if (dayOf(date) !== undefined) return true;
  findings.add(() => ({ pointer, code: "date_exists", parameters: { date } }));
  return false;
}

/** Days from one to another, both counted: 0 or less where they are the wrong way round. */
export const daysBetween = (first: string, last: string): number =>
  Math.round(((dayOf(last) ?? 0) - (dayOf(first) ?? 0)) / day_ms) + 1;

/** Minutes since midnight. */
export const minutesOf = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
