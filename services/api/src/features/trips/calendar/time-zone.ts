/**
 * A VTIMEZONE (RFC 5545, section 3.6.5) of an IANA time zone, for the years that a calendar touches: each change of the clocks in them as
 * an observance of its own, from the engine's copy of the IANA database, which is what the model has its times from.
 */
import { checkpoint, clockIn } from "@sunfathom/answers";

const minute_ms = 60_000;
const hour_ms = 60 * minute_ms;
const day_ms = 24 * hour_ms;

/** What clocks are ahead of UTC at an instant, ms: to the minute, as everywhere since 1972. */
const offsetIn = (time_zone: string) => {
  const clock = clockIn(time_zone);
  return (at_ms: number): number =>
    Date.parse(`${clock(at_ms)}Z`) - Math.floor(at_ms / minute_ms) * minute_ms;
};

interface Change {
  at_ms: number;
  from_ms: number;
  to_ms: number;
}

/** Changes of the clocks from one instant to another, found by looking once a day and then closer. */
function changesBetween(first_ms: number, last_ms: number, offsetAt: (at_ms: number) => number): Change[] {
  const changes: Change[] = [];
  for (let day = first_ms; day < last_ms; day += day_ms) {
    checkpoint();
    let [before, after] = [day, day + day_ms];
    const [from_ms, to_ms] = [offsetAt(before), offsetAt(after)];
    if (from_ms === to_ms) continue;
    while (after - before > minute_ms) {
      const middle = Math.floor((before + after) / 2 / minute_ms) * minute_ms;
      if (offsetAt(middle) === from_ms) before = middle;
      else after = middle;
    }
    changes.push({ at_ms: after, from_ms, to_ms });
  }
  return changes;
}

/** `+0930`, with seconds nowhere since 1972 (section 3.3.14). */
export function utcOffset(offset_ms: number): string {
  const minutes = Math.round(Math.abs(offset_ms) / minute_ms);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${offset_ms < 0 ? "-" : "+"}${two(Math.floor(minutes / 60))}${two(minutes % 60)}`;
}

/** `20270116T093000`, by the clocks that show it. */
export const localStamp = (iso: string): string => `${iso.slice(0, 19).replace(/[-:]/g, "").padEnd(15, "0")}`;

/** Years that follow one another, each run by its first and its last. */
function runsOf(years: readonly number[]): (readonly [number, number])[] {
  const sorted = [...new Set(years)].sort((a, b) => a - b);
  const firsts = sorted.filter((year, i) => sorted[i - 1] !== year - 1);
  const lasts = sorted.filter((year, i) => sorted[i + 1] !== year + 1);
  return firsts.map((first, i) => [first, lasts[i] ?? first]);
}

/** What holds as the first year begins, and then each change until the last one has ended. */
function changesIn([first, last]: readonly [number, number], offsetAt: (at_ms: number) => number): Change[] {
  const start_ms = Date.UTC(first, 0, 1) - day_ms;
  const begun_ms = offsetAt(start_ms);
  const changes = changesBetween(start_ms, Date.UTC(last + 1, 0, 2), offsetAt);
  return [{ at_ms: start_ms, from_ms: begun_ms, to_ms: begun_ms }, ...changes];
}

/** @param years those that are touched, in any order: what clocks do between them is nobody's question, and takes long to find out */
export function timeZoneLines(time_zone: string, years: readonly number[]): string[] {
  const offsetAt = offsetIn(time_zone);
  const all = runsOf(years).flatMap((run) => changesIn(run, offsetAt));
  const least_ms = Math.min(...all.map(({ to_ms }) => to_ms));
  return [
    "BEGIN:VTIMEZONE",
    `TZID:${time_zone}`,
    ...all.flatMap(({ at_ms, from_ms, to_ms }) => {
      const name = to_ms > least_ms ? "DAYLIGHT" : "STANDARD";
      return [
        `BEGIN:${name}`,
        // By the clocks as they were before the change.
        `DTSTART:${localStamp(new Date(at_ms + from_ms).toISOString())}`,
        `TZOFFSETFROM:${utcOffset(from_ms)}`,
        `TZOFFSETTO:${utcOffset(to_ms)}`,
        `END:${name}`,
      ];
    }),
    "END:VTIMEZONE",
  ];
}
