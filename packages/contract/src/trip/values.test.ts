import { expect, it } from "vitest";
import { cameraFields } from "../scene/camera.js";
import { daylightFields } from "../scene/daylight.js";
import { mountingInSceneNames } from "../scene/mounting/names-in-scene.js";
import { placeTimeNames } from "../scene/place-time-names.js";
import { Scene } from "../scene/scene.js";
import { tripCameraNames, tripDiveNames, tripPieceMountNames } from "./values.js";

const all = Object.keys(Scene.shape);

it("every field of a scene belongs to a dive, to a camera, or to neither", () => {
  const neither = all.filter((name) => ![...tripDiveNames, ...tripCameraNames].includes(name as never));
  expect(neither.sort()).toEqual(
    [
      // Beside the scene.
      "time",
      "local_time",
      "time_zone",
      "language",
      "units",
      "expect_model_version",
      // Filters are pieces, and video lights no part of it.
      "kit",
      "filter_kind",
      "filter_density",
      "filter_stops",
      "filter_transmittance",
      "filter_samples",
      "filter_change_underwater",
      "lamps",
      ...all.filter((name) => name.startsWith("lamp_")),
      "wanted_lead_stops",
      "wanted_lead_distance_m",
      ...tripPieceMountNames,
    ].sort(),
  );
  for (const name of [...tripDiveNames, ...tripCameraNames]) expect(all).toContain(name);
});

it("a camera has what a scene calls the camera, and what a filter is mounted on but for the filter", () => {
  const mounts = mountingInSceneNames.filter((name) => !tripPieceMountNames.includes(name as never));
  expect([...tripCameraNames].sort()).toEqual(
    [...Object.keys(cameraFields), "sensor_samples", ...mounts].sort(),
  );
});

it("a dive has what a scene calls daylight, but for the time", () => {
  const names: readonly string[] = tripDiveNames;
  const beside: readonly string[] = placeTimeNames.filter((name) => name.includes("time"));
  for (const name of Object.keys(daylightFields))
    expect([name, names.includes(name)]).toEqual([name, !beside.includes(name)]);
});
