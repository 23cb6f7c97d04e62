import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Finish, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { balanceReach } from "./balance-reach.js";
import { cameraState } from "./camera-state.js";
import { PIXELS } from "./pixels.js";
import { sensorOf } from "./sensor.js";
import { sensorProfile } from "./sensor-profile.js";

const scene = daylightScene("IB", 45, 8);

describe("a camera", () => {
  it("records as BT.709 unless the scene says another curve, in the scene's bits", () => {
    expect(cameraState(scene, NOMINAL).curve).toBe("rec709");
    expect(cameraState({ ...scene, recording_curve: "log" }, NOMINAL).curve).toBe("log");
    const recording_curve_points = [
      { light_share: 0, code_share: 0 },
      { light_share: 1, code_share: 1 },
    ];
    expect(cameraState({ ...scene, recording_curve_points }, NOMINAL).curve).toBe(recording_curve_points);
    expect(cameraState(scene, NOMINAL).pixels).toBe(PIXELS.compact);
    expect(cameraState({ ...scene, camera_class: "phone" }, NOMINAL).pixels).toBe(PIXELS.phone);
    expect(cameraState(scene, NOMINAL).bits).toBe(8);
    expect(cameraState({ ...scene, bits: 10 }, NOMINAL).bits).toBe(10);
  });

  it("is free within its limits, and bound to what the diver fixed", () => {
    expect(cameraState(scene, NOMINAL).limits).toEqual({
      min_iso: 200,
      max_iso: 3200,
      min_f_number: 2.8,
      max_f_number: 16,
      shutter_s: 1 / 50,
      shortest_shutter_s: 1 / 50,
    });
    expect(cameraState({ ...scene, exposure_mode: "auto" }, NOMINAL).limits.shortest_shutter_s).toBe(
      1 / 8000,
    );
    const { limits } = cameraState({ ...scene, iso: 400 }, NOMINAL);
    expect([limits.min_iso, limits.max_iso]).toEqual([400, 400]);
  });

  it("has the sensor and the pixels of the state of the world asked for, and its balance reaches as far as that sensor lets it", () => {
    const { profile, reach, fullWellScale } = cameraState(scene, {
      ...NOMINAL,
      crosstalkSd: 1,
      fullWellScale: 2,
    });
    expect(profile).toBe(sensorProfile(sensorOf({}, { crosstalkSd: 1 })));
    expect(reach).toEqual(balanceReach(scene, sensorProfile(sensorOf({}, { crosstalkSd: 1 }))));
    expect(fullWellScale).toBe(2);
    expect(cameraState(scene, NOMINAL).profile).toBe(sensorProfile(sensorOf({}, { crosstalkSd: 0 })));
  });

  it("meters a white card for a grade, a grey one for a picture that is looked at, and the picture by itself", () => {
    const metering = (change: Partial<Scene>, finish: Finish) =>
      cameraState({ ...scene, ...change }, NOMINAL, finish).metering;
    expect(metering({}, "matched")).toBe("white_card");
    expect(metering({}, "in_camera")).toBe("grey_card");
    expect(metering({}, "basic_edit")).toBe("grey_card");
    for (const finish of ["in_camera", "basic_edit", "matched"] as const)
      expect(metering({ exposure_mode: "auto" }, finish)).toBe("picture");
  });
});
