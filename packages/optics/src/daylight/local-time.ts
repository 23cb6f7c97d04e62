/**
 * The instant that a clock on a wall shows: a local time without offset and an IANA time zone.
 *
 * Offsets come from the engine's own copy of the IANA time zone database through Intl, so two engines agree as far as
 * their copies do. An hour that a clock change skips is refused; of an hour that it repeats the first occurrence is taken,
 * as RFC 5545 section 3.3.5 has it, and the result says so.
 * Domain: the years 1900 to 2100, whole seconds.
 */
import { OpticsDomainError } from "../domain-error.js";

export interface LocalInstant {
  instant: Date;
  /** What the zone's clocks were ahead of UTC at that instant, minutes; fractions occur before about 1970. */
  utc_offset_min: number;
  /** Present when the clock showed this time twice and the first occurrence was taken: the second one. */
  repeated_at?: Date;
}

const SHAPE = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2}))?$/;
const ZONE_NAME = /^[A-Za-z][A-Za-z0-9_+-]*(?:\/[A-Za-z0-9_+-]+)*$/;
const MINUTE_MS = 60_000;
const FIRST_YEAR = 1900;
const LAST_YEAR = 2100;
const DAY_MS = 86_400_000;
/** Around a clock change both offsets are found by looking this far to either side; no zone changes twice within it. */
const LOOK_AROUND_MS = [-DAY_MS, -DAY_MS / 2, 0, DAY_MS / 2, DAY_MS];

/** Milliseconds since 1970 at which a clock on UTC shows these digits. */
function digitsAsUtc(localTime: string): number {
  const match = SHAPE.exec(localTime);
  const [year, month, day, hour, minute, second] = (match ?? []).slice(1).map((part) => Number(part ?? 0));
  const asUtc = match ? Date.UTC(year, month - 1, day, hour, minute, second) : Number.NaN;
  // Date.UTC carries 31 February over into March: a time that comes back changed was none.
  const shown = Number.isNaN(asUtc) ? "" : new Date(asUtc).toISOString();
  if (!match || !shown.startsWith(localTime) || year < FIRST_YEAR || year > LAST_YEAR) {
    throw new OpticsDomainError({
      code: "local_time_malformed",
      parameters: { local_time: localTime, first_year: FIRST_YEAR, last_year: LAST_YEAR },
    });
  }
  return asUtc;
}

function clockOf(timeZone: string): Intl.DateTimeFormat {
  try {
    if (!ZONE_NAME.test(timeZone)) throw new RangeError("not a name");
    return new Intl.DateTimeFormat("en-US", {
      timeZone,
      hourCycle: "h23",
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
      second: "2-digit",
    });
  } catch {
    throw new OpticsDomainError({ code: "time_zone_unknown", parameters: { time_zone: timeZone } });
  }
}

function offset_ms(clock: Intl.DateTimeFormat, instant_ms: number): number {
  const part = new Map(clock.formatToParts(instant_ms).map(({ type, value }) => [type, Number(value)]));
  const read = (type: Intl.DateTimeFormatPartTypes): number => part.get(type) ?? Number.NaN;
  const shown = Date.UTC(
    read("year"),
    read("month") - 1,
    read("day"),
    read("hour"),
    read("minute"),
    read("second"),
  );
  return shown - instant_ms;
}

/**
 * @param localTime `YYYY-MM-DDThh:mm` or `YYYY-MM-DDThh:mm:ss`, as the clocks of the zone show it.
 * @param timeZone a name of the IANA time zone database.
 * @throws OpticsDomainError `local_time_malformed`, `time_zone_unknown`, or `local_time_skipped` when a clock change leaps
 * over that time.
 */
export function localTimeToInstant(localTime: string, timeZone: string): LocalInstant {
  const asUtc = digitsAsUtc(localTime);
  const clock = clockOf(timeZone);
  const offsets = new Set(LOOK_AROUND_MS.map((away) => offset_ms(clock, asUtc + away)));
  const found = [...offsets]
    .map((offset) => ({ offset, at: asUtc - offset }))
    .filter(({ offset, at }) => offset_ms(clock, at) === offset)
    .sort((a, b) => a.at - b.at);
  const [first, second] = found;
  if (!first) {
    throw new OpticsDomainError({
      code: "local_time_skipped",
      parameters: { local_time: localTime, time_zone: timeZone },
    });
  }
  const result: LocalInstant = { instant: new Date(first.at), utc_offset_min: first.offset / MINUTE_MS };
  return second ? { ...result, repeated_at: new Date(second.at) } : result;
}

/**
 * What the clocks of a zone show.
 * @param timeZone a name of the IANA time zone database
 * @returns local time to the minute, `YYYY-MM-DDThh:mm`, of an instant in ms since 1970
 * @throws OpticsDomainError `time_zone_unknown`
 */
export function clockIn(timeZone: string): (instant_ms: number) => string {
  const clock = clockOf(timeZone);
  return (instant_ms) => new Date(instant_ms + offset_ms(clock, instant_ms)).toISOString().slice(0, 16);
}
