import { daylightScene } from "@sunfathom/fixtures/scenes";
import { attenuation, type Scene } from "@sunfathom/planner";
import { en } from "@sunfathom/words/en";
import { expect, it } from "vitest";
import { figuresOf } from "./figures-of.js";
import { sayParts } from "./say-parts.js";

const scene: Scene = {
  ...daylightScene("IB", 45, 5),
  daylight_basis: "place_time",
  latitude_deg: -47.3,
  longitude_deg: -128.4,
  time: "2027-01-10T10:15:00-09:00",
};

it("puts reasons, cautions and causes of doubt into words, with all that they are made of", () => {
  const planned = attenuation(scene);
  const said = sayParts(planned, en.attenuation);
  const stands = planned.reasons.find(({ code }) => code === "sun_stands");
  const { elevation_deg, azimuth_deg } = (stands?.parameters ?? {}) as Record<string, number>;
  expect(said.reasons.find(({ code }) => code === "sun_stands")).toEqual({
    code: "sun_stands",
    text: expect.stringContaining("10:15 local time"),
    basis: "computed",
    figures: [
      { name: "elevation_deg", value: elevation_deg },
      { name: "azimuth_deg", value: azimuth_deg },
    ],
    parameters: {
      elevation_deg,
      azimuth_deg,
      time: "2027-01-10T19:15:00.000Z",
      local: { time: "2027-01-10T10:15" },
    },
  });
  expect(said.cautions).toEqual([
    { code: "not_a_dive_planner", text: en.attenuation.cautions.not_a_dive_planner },
  ]);
  const [cause] = planned.uncertainty;
  expect(said.uncertainty[0]).toEqual({
    cause: "sensor",
    ...en.attenuation.causes.sensor({}),
    share: cause.share,
    parameters: {},
  });
  expect(said.depths).toBe(planned.depths);
});

it("says nothing in the words of another language than the one it is given", () => {
  const cautions = { ...en.attenuation.cautions, not_a_dive_planner: "Kein Tauchplan." };
  const said = sayParts(attenuation(scene), { ...en.attenuation, cautions });
  expect(said.cautions.map(({ text }) => text)).toEqual(["Kein Tauchplan."]);
});

it("figures are numbers alone, 0 among them", () => {
  expect(figuresOf({ a: 0, b: "1", c: true, d: [2], e: undefined, f: -3.5 })).toEqual([
    { name: "a", value: 0 },
    { name: "f", value: -3.5 },
  ]);
});
