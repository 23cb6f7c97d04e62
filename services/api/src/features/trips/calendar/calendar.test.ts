// Calendars as others read them: two parsers that know nothing of each other (ical.js 2.2.1, ts-ics 2.4.6), and the examples of RFC 5545.
import type { TripCalendar } from "@sunfathom/answers";
import fc from "fast-check";
import ICAL from "ical.js";
import { convertIcsCalendar } from "ts-ics";
import { describe, expect, it } from "vitest";
import { calendarText, stampOf } from "./calendar.js";
import { escaped, folded, quoted } from "./content-lines.js";
import { nameUuid } from "./name-uuid.js";
import { localStamp, timeZoneLines, utcOffset } from "./time-zone.js";

const event = (own: Partial<TripCalendar["events"][number]>): TripCalendar["events"][number] => ({
  id: "d1",
  title: "Gannet Stair: red-67",
  text: "Mount red-67.\n\nThis is no dive plan.",
  place: "Gannet Stair",
  local_time: "2027-03-27T09:30",
  time_zone: "Europe/Rome",
  duration_min: 60,
  ...own,
});
const calendar = (...events: TripCalendar["events"]): TripCalendar => ({
  id: "trip",
  language: "en",
  events,
});

/** When an event begins and ends by ical.js, which reckons with the VTIMEZONE that comes with it, in UTC. */
function byIcal(text: string) {
  const component = new ICAL.Component(ICAL.parse(text));
  const zones = new Map(
    component
      .getAllSubcomponents("vtimezone")
      .map((zone) => [String(zone.getFirstPropertyValue("tzid")), new ICAL.Timezone(zone)]),
  );
  return component.getAllSubcomponents("vevent").map((one) => {
    const read = new ICAL.Event(one);
    const zone = zones.get(String(one.getFirstProperty("dtstart")?.getParameter("tzid")));
    if (zone === undefined) throw new Error("The event names no zone of its calendar.");
    const start = read.startDate;
    start.zone = zone;
    return {
      uid: read.uid,
      summary: read.summary,
      description: read.description,
      location: read.location,
      start: start.toJSDate().toISOString(),
      minutes: read.duration.toSeconds() / 60,
    };
  });
}

/** The same by ts-ics. */
const byTsIcs = (text: string) =>
  (convertIcsCalendar(undefined, text).events ?? []).map(
    ({ uid, summary, description, location, start, duration }) => ({
      uid,
      summary,
      description,
      location,
      start: start.date.toISOString(),
      minutes: (duration?.hours ?? 0) * 60 + (duration?.minutes ?? 0),
    }),
  );

// Instants from the IANA time zone database, as `zdump -v` tells its rules: Europe/Rome is UTC+1, and UTC+2 from 2027-03-28T01:00Z to
// 2027-10-31T01:00Z. Australia/Lord_Howe moves by half an hour (UTC+11 to UTC+10:30 on 2027-04-03T15:00Z). Etc/GMT+9 is UTC-9 always.
const cases: [string, string, string][] = [
  ["Europe/Rome", "2027-03-27T09:30", "2027-03-27T08:30:00.000Z"],
  ["Europe/Rome", "2027-03-28T03:00", "2027-03-28T01:00:00.000Z"],
  ["Europe/Rome", "2027-03-29T09:30", "2027-03-29T07:30:00.000Z"],
  ["Europe/Rome", "2027-10-30T14:00", "2027-10-30T12:00:00.000Z"],
  ["Europe/Rome", "2027-11-01T14:00", "2027-11-01T13:00:00.000Z"],
  ["Australia/Lord_Howe", "2027-04-03T09:00", "2027-04-02T22:00:00.000Z"],
  ["Australia/Lord_Howe", "2027-04-05T09:00", "2027-04-04T22:30:00.000Z"],
  ["Etc/GMT+9", "2027-01-16T09:30", "2027-01-16T18:30:00.000Z"],
  ["Asia/Kathmandu", "2027-01-16T09:30", "2027-01-16T03:45:00.000Z"],
  // New Year lies between the dive and its instant.
  ["Pacific/Kiritimati", "2028-01-01T08:00", "2027-12-31T18:00:00.000Z"],
];

describe("two readers", () => {
  it.each(cases)("take %s %s for %s", (time_zone, local_time, instant) => {
    const text = calendarText(calendar(event({ time_zone, local_time })));
    const [ical] = byIcal(text);
    expect(ical?.start).toBe(instant);
    const [tsIcs] = byTsIcs(text);
    expect(tsIcs).toEqual(ical);
    expect(ical).toMatchObject({
      summary: "Gannet Stair: red-67",
      location: "Gannet Stair",
      description: "Mount red-67.\n\nThis is no dive plan.",
      minutes: 60,
    });
  });

  // ts-ics reckons a change from the offset that it leads to, where section 3.6.5 has the one that it leads from, and so is an hour off in
  // the hour before: here one reader is asked alone.
  it.each([
    ["2027-03-28T01:59", "2027-03-28T00:59:00.000Z"],
    ["2027-10-31T01:59", "2027-10-30T23:59:00.000Z"],
  ])("to the minute before a change: %s", (local_time, instant) => {
    expect(byIcal(calendarText(calendar(event({ local_time }))))[0]?.start).toBe(instant);
  });

  it("read a whole trip across a clock change, each dive with an id of its own", () => {
    const dives = ["2027-03-26T09:30", "2027-03-28T09:30", "2027-10-31T09:30", "2028-01-02T09:30"];
    const text = calendarText(calendar(...dives.map((local_time, d) => event({ id: `d${d}`, local_time }))));
    const read = byIcal(text);
    expect(read.map(({ start }) => start.slice(11, 16))).toEqual(["08:30", "07:30", "08:30", "08:30"]);
    expect(byTsIcs(text)).toEqual(read);
    expect(new Set(read.map(({ uid }) => uid)).size).toBe(4);
  });

  it("get back any text, as far as a calendar can hold it", () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what a calendar has no place for
    const isPlain = (text: string) => !/[\u0000-\u001f\u007f\u0085\u2028\u2029\ufeff]/.test(text);
    const words = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 120 })
      .filter((text) => isPlain(text) && text.trim() === text);
    fc.assert(
      fc.property(words, fc.array(words, { maxLength: 3 }), (title, lines) => {
        const text = calendarText(calendar(event({ title, text: [title, ...lines].join("\n") })));
        for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        const [ical] = byIcal(text);
        expect(ical?.summary).toBe(title);
        expect(ical?.description).toBe([title, ...lines].join("\n"));
      }),
      { numRuns: 60 },
    );
  });
});

describe("a calendar", () => {
  it("is the same, byte by byte, for the same trip, and keeps its ids where a dive is moved", () => {
    const [first, again] = [calendarText(calendar(event({}))), calendarText(calendar(event({})))];
    expect(again).toBe(first);
    const moved = calendarText(calendar(event({ local_time: "2027-04-02T11:00", title: "moved" })));
    expect(byIcal(moved)[0]?.uid).toBe(byIcal(first)[0]?.uid);
    const other = calendarText({ ...calendar(event({})), guest_id: "g1" });
    expect(byIcal(other)[0]?.uid).not.toBe(byIcal(first)[0]?.uid);
  });

  it("ends every line, the last one too, as RFC 5545 section 3.1 says", () => {
    const text = calendarText(calendar(event({})));
    expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  it("is stamped with the month of the model", () => {
    expect(stampOf("2026.11.21")).toBe("20261101T000000Z");
    expect(stampOf("2027.3.1")).toBe("20270301T000000Z");
  });

  it("says where a dive is, where it knows", () => {
    const text = calendarText(calendar(event({ position: { latitude_deg: -47.3, longitude_deg: -128.4 } })));
    expect(text).toContain("\r\nGEO:-47.3;-128.4\r\n");
  });
});

describe("lines", () => {
  it("fold between characters, never within one (RFC 5545, section 3.1)", () => {
    const line = `DESCRIPTION:${"ß".repeat(100)}`;
    const lines = folded(line).split("\r\n");
    expect(lines.map((one) => Buffer.byteLength(one)).every((octets) => octets <= 75)).toBe(true);
    expect(lines.map((one, i) => (i === 0 ? one : one.slice(1))).join("")).toBe(line);
  });

  it("escape as section 3.3.11 says", () => {
    // The section's own example.
    expect(escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")).toBe(
      "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.",
    );
    expect(escaped("a;b,c\\d\r\ne\rf\u0000\u0007")).toBe("a\\;b\\,c\\\\d\\ne\\nf  ");
  });

  it("quote parameters that need it (section 3.2)", () => {
    expect(quoted("Etc/GMT+9")).toBe("Etc/GMT+9");
    expect(quoted('a:b"c\n')).toBe('"a:b c "');
  });
});

describe("a time zone", () => {
  it("lists the changes of the years that are touched (section 3.6.5)", () => {
    const lines = timeZoneLines("Europe/Rome", [2027]);
    expect(lines.filter((line) => line.startsWith("DTSTART"))).toEqual([
      "DTSTART:20261231T010000",
      "DTSTART:20270328T020000",
      "DTSTART:20271031T030000",
    ]);
    expect(lines.filter((line) => line.startsWith("BEGIN"))).toEqual([
      "BEGIN:VTIMEZONE",
      "BEGIN:STANDARD",
      "BEGIN:DAYLIGHT",
      "BEGIN:STANDARD",
    ]);
  });

  it("leaves out what clocks do between years that are far apart, and every event keeps its time", () => {
    const years = timeZoneLines("Europe/Rome", [2090, 1990, 1990])
      .filter((line) => line.startsWith("DTSTART:"))
      .map((line) => line.slice(8, 12));
    expect(years).toEqual(["1989", "1990", "1990", "2089", "2090", "2090"]);
    const text = calendarText(
      calendar(
        event({ local_time: "1990-07-01T09:30" }),
        event({ id: "d2", local_time: "2090-01-02T09:30" }),
        event({ id: "d3", local_time: "2090-07-01T09:30" }),
      ),
    );
    // Italy is an hour ahead of UTC in winter and two in summer (EU directive 2000/84/EC; before it, directive 89/47/EEC).
    const starts = ["1990-07-01T07:30:00.000Z", "2090-01-02T08:30:00.000Z", "2090-07-01T07:30:00.000Z"];
    expect(byIcal(text).map(({ start }) => start)).toEqual(starts);
  });

  it("looks at no more clocks than dives touch: thirty-one zones, and years two centuries apart", () => {
    const zones = Intl.supportedValuesOf("timeZone").filter((_, n) => n % 13 === 0);
    const events = zones
      .slice(0, 31)
      .map((time_zone, n) =>
        event({ id: `d${n}`, time_zone, local_time: `${n % 2 === 0 ? 1901 : 2099}-06-05T09:30` }),
      );
    const observances = calendarText(calendar(...events)).match(/BEGIN:(STANDARD|DAYLIGHT)/g) ?? [];
    // A zone changes its clocks four times in a year at the most, as with a fast in summer.
    expect(observances.length).toBeLessThan(31 * 6);
  });

  it("has one observance where clocks never change", () => {
    expect(
      timeZoneLines("Etc/GMT+9", [2027, 2028]).filter((line) => line.startsWith("BEGIN:S")),
    ).toHaveLength(1);
  });

  it("writes offsets as section 3.3.14 says", () => {
    expect([utcOffset(0), utcOffset(-9 * 3_600_000), utcOffset(20_700_000)]).toEqual([
      "+0000",
      "-0900",
      "+0545",
    ]);
  });

  it("writes local times with their seconds", () => {
    expect(localStamp("2027-01-16T09:30")).toBe("20270116T093000");
    expect(localStamp("2027-01-16T09:30:15")).toBe("20270116T093015");
  });
});

it("a name has one UUID of version 5 (RFC 9562, section 5.5)", () => {
  expect(nameUuid("a", "b")).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(nameUuid("a", "b")).toBe(nameUuid("a", "b"));
  expect(nameUuid("a", "b")).not.toBe(nameUuid("ab", ""));
});
