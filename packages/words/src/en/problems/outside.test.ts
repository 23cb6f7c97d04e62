import { describe, expect, it } from "vitest";
import { outsideLight } from "./outside-light.js";
import { outsideMeanings } from "./outside-meanings.js";
import { outsideMounting } from "./outside-mounting.js";

describe("what lies outside the model is told with its numbers", () => {
  const years = { first_year: 1900, last_year: 2100 };
  it.each([
    [outsideLight.instant_out_of_range({ year: 2101, ...years }), /2101.*1900.*2100/],
    [outsideLight.instant_out_of_range(years), /^\D*1900\D*2100\D*$/],
    [
      outsideLight.local_time_skipped({ local_time: "2026-03-29T02:30", time_zone: "CET" }),
      /CET.*2026-03-29T02:30/,
    ],
    [
      outsideLight.visibility_out_of_range({ value_m: 500, min_m: 0.2, max_m: 95.7 }),
      /visibility_m.*\b500\b.*\b0\.2 m.*\b96 m/,
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
      /visibility_m.*\b5\b.*blue-green.*\b7\.8 m.*\b30 m.*\bgreen\b.*\bbrown\b/,
    ],
    [outsideLight.card_samples_malformed({ case: "clipped", depth_m: 7, value: 0.995 }), /\b7 m.*\b0\.995\b/],
    [
      outsideLight.card_samples_malformed({
        case: "not_with_all",
        field: "balance_gains",
        given: 2,
        samples: 3,
      }),
      /\b2\b.*\b3\b.*balance_gains/,
    ],
    [outsideLight.card_samples_too_few({ span_m: 0, least_span_m: 2 }), /\b0\.0 m.*\b2 m/],
    [outsideLight.no_daylight_left({ depth_m: 1000, max_depth_m: 98.4, is_daylit: true }), /\b1000 m/],
    [
      outsideMounting.corner_outside_image_circle({
        focal_length_mm: 8,
        image_circle_mm: 32,
        format_mm: 43.3,
        min_focal_length_mm: 10.8,
      }),
      /\b8\.0 mm.*\b43\.3 mm/,
    ],
  ])("%o", ({ detail }, figures) => {
    expect(detail).toMatch(figures);
  });

  it("on which side of all waters card samples lie", () => {
    const [clearer, murkier] = (["clearer", "murkier"] as const).map((side) =>
      outsideLight.card_samples_outside_family({ case: side }),
    );
    expect(clearer?.detail).not.toBe(murkier?.detail);
  });
});

describe("a field too wide", () => {
  const wide = { field_of_view_deg: 230, max_field_of_view_deg: 170 };
  const said = (lens_kind: "wide" | "fisheye", port_kind: "flat" | "none" | "dome") =>
    outsideMounting.field_too_wide({ ...wide, lens_kind, port_kind });

  it("is told with its angle and the widest possible, and why by lens and port", () => {
    const flat = said("fisheye", "flat");
    for (const { message, allowed } of [said("wide", "flat"), flat, said("fisheye", "dome")]) {
      expect(message).toContain("230.0");
      expect(allowed).toContain("170");
    }
    expect(said("fisheye", "none")).toEqual(flat);
    expect(said("wide", "flat").allowed).toContain("lens_kind fisheye");
    expect(flat.allowed).toContain("dome");
    expect(said("fisheye", "dome").allowed).not.toContain("dome");
    const why = [said("wide", "flat"), flat, said("fisheye", "dome")].map(({ message }) => message);
    expect(new Set(why)).toHaveLength(3);
  });
});

it("a sun too low is told how high it stands, and from where on the model holds", () => {
  expect(outsideLight.sun_too_low({ elevation_deg: 1, min_elevation_deg: 10 })).toMatchObject({
    message: expect.stringMatching(/\b1\.0\b/),
    allowed: expect.stringMatching(/10 to 90.*daylight_basis "none"/),
  });
});

it("every code that has a text has a meaning, and none else", () => {
  expect([...Object.keys(outsideLight), ...Object.keys(outsideMounting)].sort()).toEqual(
    Object.keys(outsideMeanings).sort(),
  );
});
