import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { localTimeToInstant } from "./local-time.js";

describe("local time to instant", () => {
  // Real zones throughout, since their published rules are what is held: offsets of the IANA time zone database; the clock changes of
  // 2026 are those of its current rules.
  it.each([
    ["2026-03-10T10:15", "Europe/Helsinki", "2026-03-10T08:15:00.000Z", 120],
    ["2026-07-10T10:15", "Europe/Helsinki", "2026-07-10T07:15:00.000Z", 180],
    ["2026-03-10T10:15:30", "Asia/Shanghai", "2026-03-10T02:15:30.000Z", 480],
    ["2026-03-10T10:15", "Asia/Kathmandu", "2026-03-10T04:30:00.000Z", 345],
    ["2026-03-10T10:15", "Pacific/Marquesas", "2026-03-10T19:45:00.000Z", -570],
    ["2026-03-10T00:00", "Pacific/Kiritimati", "2026-03-09T10:00:00.000Z", 840],
    ["2024-02-29T23:59:59", "America/Bogota", "2024-03-01T04:59:59.000Z", -300],
    ["2026-03-10T10:15", "UTC", "2026-03-10T10:15:00.000Z", 0],
  ])("%s in %s is %s", (local, zone, utc, offset) => {
    const result = localTimeToInstant(local, zone);
    expect(result).toEqual({ instant: new Date(utc), utc_offset_min: offset });
  });

  it("takes the first and the last year", () => {
    expect(localTimeToInstant("1900-06-01T12:00", "UTC").instant).toEqual(new Date("1900-06-01T12:00Z"));
    expect(localTimeToInstant("2100-06-01T12:00", "UTC").instant).toEqual(new Date("2100-06-01T12:00Z"));
  });

  it("says what was wrong, and what is right", () => {
    const refused = (code: string, parameters: object) =>
      expect.objectContaining({ refusal: { code, parameters } });
    expect(() => localTimeToInstant("noon", "UTC")).toThrow(
      refused("local_time_malformed", { local_time: "noon", first_year: 1900, last_year: 2100 }),
    );
    expect(() => localTimeToInstant("2026-03-10T10:15", "Atlantis")).toThrow(
      refused("time_zone_unknown", { time_zone: "Atlantis" }),
    );
    const skipped = { local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" };
    expect(() => localTimeToInstant(skipped.local_time, skipped.time_zone)).toThrow(
      refused("local_time_skipped", skipped),
    );
  });

  it.each([
    ["2026-03-29T02:30", "Europe/Berlin"],
    ["2026-03-29T02:00", "Europe/Berlin"],
    ["2026-03-08T02:30", "America/New_York"],
    ["2026-10-04T02:15", "Australia/Lord_Howe"],
    ["2011-12-30T12:00", "Pacific/Apia"],
  ])("refuses %s in %s, which a clock change skipped", (local, zone) => {
    expect(() => localTimeToInstant(local, zone)).toThrow(
      expect.objectContaining({ code: "local_time_skipped" }),
    );
  });

  it.each([
    ["2026-10-25T02:30", "Europe/Berlin", "2026-10-25T00:30:00.000Z", "2026-10-25T01:30:00.000Z"],
    ["2026-11-01T01:59:59", "America/New_York", "2026-11-01T05:59:59.000Z", "2026-11-01T06:59:59.000Z"],
    ["2026-04-05T01:45", "Australia/Lord_Howe", "2026-04-04T14:45:00.000Z", "2026-04-04T15:15:00.000Z"],
  ])("takes the first of the two %s in %s and says so (RFC 5545, 3.3.5)", (local, zone, first, second) => {
    const result = localTimeToInstant(local, zone);
    expect(result.instant.toISOString()).toBe(first);
    expect(result.repeated_at?.toISOString()).toBe(second);
  });

  it.each(["Nowhere/Here", "", "+02:00", "Europe/Berlin ", "Europe", "GMT+2"])(
    "refuses the zone %j",
    (zone) => {
      expect(() => localTimeToInstant("2026-03-10T10:15", zone)).toThrow(
        expect.objectContaining({ code: "time_zone_unknown" }),
      );
    },
  );

  it.each([
    "2026-03-10T10:15Z",
    "2026-03-10T10:15+02:00",
    "2026-03-10 10:15",
    "2026-02-30T10:15",
    "2026-03-10T24:00",
    "2026-03-10T10:60",
    "2026-03-10T10:15:60",
    "0099-03-10T10:15",
    "1899-12-31T10:15",
    "2101-01-01T10:15",
    "2026-03-10",
    "",
  ])("refuses the time %j", (local) => {
    expect(() => localTimeToInstant(local, "Europe/Berlin")).toThrow(
      expect.objectContaining({ code: "local_time_malformed" }),
    );
  });

  it("agrees with an independent library on every half hour around the changes of several zones", () => {
    const zones = [
      "Europe/Berlin",
      "America/New_York",
      "Australia/Lord_Howe",
      "Africa/Casablanca",
      "Asia/Shanghai",
    ];
    const days = [
      "2026-03-08",
      "2026-03-29",
      "2026-04-05",
      "2026-10-04",
      "2026-10-25",
      "2026-11-01",
      "2026-02-15",
    ];
    let refused = 0;
    let repeated = 0;
    for (const zone of zones) {
      for (const day of days) {
        for (let step = 0; step < 48; step++) {
          const local = `${day}T${String(step >> 1).padStart(2, "0")}:${step % 2 ? "30" : "00"}`;
          const plain = Temporal.PlainDateTime.from(local);
          const earlier = plain.toZonedDateTime(zone, { disambiguation: "earlier" });
          const later = plain.toZonedDateTime(zone, { disambiguation: "later" });
          if (!earlier.toPlainDateTime().equals(plain)) {
            refused++;
            expect(() => localTimeToInstant(local, zone)).toThrow(
              expect.objectContaining({ code: "local_time_skipped" }),
            );
            continue;
          }
          const ours = localTimeToInstant(local, zone);
          expect(ours.instant.getTime(), `${local} ${zone}`).toBe(earlier.epochMilliseconds);
          const twice = later.epochMilliseconds !== earlier.epochMilliseconds;
          if (twice) repeated++;
          expect(ours.repeated_at?.getTime()).toBe(twice ? later.epochMilliseconds : undefined);
        }
      }
    }
    expect(refused).toBeGreaterThan(4);
    expect(repeated).toBeGreaterThan(4);
  });
});
