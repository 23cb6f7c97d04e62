import { modelVersion, type TripCalendar } from "@sunfathom/answers";
import { escaped, quoted, written } from "./content-lines.js";
import { nameUuid } from "./name-uuid.js";
import { localStamp, timeZoneLines } from "./time-zone.js";

/**
 * When a calendar was made (DTSTAMP, section 3.8.7.2): the month of the model. The clock has no say, so that the same trip is the same
 * calendar, byte by byte.
 */
export function stampOf(version: string): string {
  const [year = "", month = ""] = version.split(".");
  return `${year.padStart(4, "0")}${month.padStart(2, "0")}01T000000Z`;
}

const yearOf = (local_time: string): number => Number(local_time.slice(0, 4));

/** A calendar as `text/calendar` (RFC 5545): an event for each dive, and each time zone that they name. */
export function calendarText({ id, guest_id = "", language, events }: TripCalendar): string {
  const stamp = stampOf(modelVersion);
  const zones = [...new Set(events.map(({ time_zone }) => time_zone))];
  const touched = (zone: string) =>
    events.filter(({ time_zone }) => time_zone === zone).map(({ local_time }) => yearOf(local_time));
  const tongue = `LANGUAGE=${language}`;
  return written([
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Sunfathom//Trip advice//EN",
    "CALSCALE:GREGORIAN",
    ...zones.flatMap((zone) => timeZoneLines(zone, touched(zone))),
    ...events.flatMap((event) => [
      "BEGIN:VEVENT",
      `UID:${nameUuid(id, guest_id, event.id)}`,
      `DTSTAMP:${stamp}`,
      `DTSTART;TZID=${quoted(event.time_zone)}:${localStamp(event.local_time)}`,
      // Where clocks change meanwhile, what they show at the end may be ambiguous: how long it takes is not.
      `DURATION:PT${event.duration_min}M`,
      `SUMMARY;${tongue}:${escaped(event.title)}`,
      `LOCATION;${tongue}:${escaped(event.place)}`,
      ...(event.position === undefined
        ? []
        : [`GEO:${event.position.latitude_deg};${event.position.longitude_deg}`]),
      `DESCRIPTION;${tongue}:${escaped(event.text)}`,
      "END:VEVENT",
    ]),
    "END:VCALENDAR",
  ]);
}
