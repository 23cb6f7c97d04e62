import { describe, expect, it } from "vitest";
import { outsideLight } from "./outside-light.js";
import { outsideMeanings } from "./outside-meanings.js";
import { outsideMounting } from "./outside-mounting.js";

describe("what lies outside the model is said with its numbers", () => {
  const years = { first_year: 1900, last_year: 2100 };
  it.each([
    [
      outsideLight.instant_out_of_range({ year: 2101, ...years }),
      "The instant is in the year 2101; the sun's place is given for 1900 to 2100.",
    ],
    [
      outsideLight.instant_out_of_range(years),
      "The instant is not a date; the sun's place is given for 1900 to 2100.",
    ],
    [
      outsideLight.local_time_skipped({ local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" }),
      "The clocks of Europe/Berlin never showed 2026-03-29T02:30: they were put forward over it. Give a time before or after the change.",
    ],
    [
      outsideLight.visibility_out_of_range({ value_m: 500, min_m: 0.2, max_m: 95.7 }),
      "visibility_m is 500; natural water shows 0.2 m to 96 m.",
    ],
    [
      outsideLight.water_hue_contradicts_measure({
        measure: "visibility_m",
        value_m: 5,
        water_hue: "blue_green",
        min_m: 7.8,
        max_m: 29.6,
        fitting_hues: ["green", "brown"],
      }),
      "visibility_m of 5 does not go with blue_green water, which shows 7.8 m to 30 m. Such a distance is seen in water that is green or brown.",
    ],
    [
      outsideLight.card_samples_malformed({ case: "clipped", depth_m: 7, value: 0.995 }),
      "The card at 7 m is clipped (0.995); expose it darker.",
    ],
    [
      outsideLight.card_samples_malformed({
        case: "not_with_all",
        field: "balance_gains",
        given: 2,
        samples: 3,
      }),
      "balance_gains is given with 2 of 3 card samples; give it with all or with none.",
    ],
    [
      outsideLight.card_samples_too_few({ span_m: 0, least_span_m: 2 }),
      "The card was taken at depths 0.0 m apart; two depths at least 2 m apart are needed.",
    ],
    [
      outsideLight.card_samples_outside_family({ case: "murkier" }),
      "The card samples ask for a water murkier than any published type; check depths, exposures and the order of the pictures.",
    ],
    [
      outsideLight.no_daylight_left({ depth_m: 1000, max_depth_m: 98.4 }),
      "At 1000 m nothing is left of daylight in this water.",
    ],
    [
      outsideMounting.corner_outside_image_circle({
        focal_length_mm: 8,
        image_circle_mm: 32,
        format_mm: 43.3,
        min_focal_length_mm: 10.8,
      }),
      "A fisheye of 8.0 mm does not reach the corners of a format of 43.3 mm.",
    ],
  ])("%o", ({ detail }, said) => {
    expect(detail).toBe(said);
  });
});

describe("a field too wide", () => {
  const wide = { field_of_view_deg: 230, max_field_of_view_deg: 170 };
  it.each([
    ["wide", "flat", "straight lines", ", or lens_kind fisheye"],
    ["fisheye", "flat", "reflects", ", or a dome"],
    ["fisheye", "none", "reflects", ", or a dome"],
    ["fisheye", "dome", "behind itself", ""],
  ] as const)(
    "of a lens %s behind a port %s is told why, and what would be possible",
    (lens, port, why, or) => {
      const text = outsideMounting.field_too_wide({ ...wide, lens_kind: lens, port_kind: port });
      expect(text.message).toContain("230.0 degrees");
      expect(text.message).toContain(why);
      expect(text.allowed).toBe(`a field of at most 170 degrees in air${or}`);
    },
  );
});

it("a sun too low is told how high it stands, and from where on the model holds", () => {
  expect(outsideLight.sun_too_low({ elevation_deg: 1, min_elevation_deg: 10 })).toMatchObject({
    message: "the sun stands at 1.0 degrees, outside the model's domain",
    allowed: expect.stringMatching(/10 to 90 degrees.*daylight_basis "none"/),
  });
});

it("every code that has a text has a meaning, and none else", () => {
  expect([...Object.keys(outsideLight), ...Object.keys(outsideMounting)].sort()).toEqual(
    Object.keys(outsideMeanings).sort(),
  );
});
