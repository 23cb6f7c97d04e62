// Mounts that were once judged wrongly: each as the camera it was asked for.
import { describe, expect, it } from "vitest";
import { answer } from "../../packages/answers/src/operations/in-english.test-support.js";
import type { Wire } from "./wire.js";

function mountOn(scene: object): Wire {
  const reply = answer("filter-mounting", scene);
  if (reply.status !== "ok") throw new Error(JSON.stringify(reply));
  return reply.body;
}

const optionOf = (mount: Wire, holder: string) =>
  mount.options.find((option: Wire) => option.holder === holder);
const codesOf = (mount: Wire) => mount.reasons.map(({ code }: Wire) => code);

/** A pocket camera with a lens that stays on, in its housing; makers tell its view, not its sensor. */
const POCKET = {
  port_kind: "flat",
  lens_kind: "wide",
  field_of_view_deg: 84,
  lens_interchangeable: false,
  port_thread_mm: 67,
};

describe("mounts that were once judged wrongly", () => {
  it("a fixed lens is not taken for full frame, nor told that no holder fits", () => {
    const mount = mountOn(POCKET);
    expect(mount.verdict).not.toBe("does_not_fit");
    // 13.2 x 8.8 mm, the 1-inch type, has a diagonal of 15.9 mm; full frame has 43.3.
    const said = mount.reasons.find(({ code }: Wire) => code === "format_assumed");
    expect(said.parameters.diagonal_mm).toBeCloseTo(15.9, 1);
    expect(mount.scene.assumed).toContain("sensor_diagonal_mm");
    // Whatever the format is that is not given, an answer for it lies within what is told for none.
    for (const sensor_diagonal_mm of [7.7, 15.9, 28.4]) {
      const told = mountOn({ ...POCKET, sensor_diagonal_mm }).vignetting.corner_light_percent.likely;
      expect(told).toBeGreaterThanOrEqual(mount.vignetting.corner_light_percent.low - 1);
      expect(told).toBeLessThanOrEqual(mount.vignetting.corner_light_percent.high + 1);
    }
  });

  it.each(["wide", "fisheye"])(
    "a frame for an action camera goes over its dive housing too: %s",
    (lens_kind) => {
      const inHousing = {
        port_kind: "flat",
        lens_kind,
        field_of_view_deg: lens_kind === "fisheye" ? 150 : 94,
        lens_interchangeable: false,
        sensor_diagonal_mm: 7.7,
        filter_clear_diameter_mm: 75,
      };
      const frame = optionOf(mountOn(inHousing), "action_camera");
      expect(frame.code).not.toBe("mount_not_an_action_camera");
      expect(frame.place).toBe("before_port");
      expect(optionOf(mountOn({ ...inHousing, holder: "action_camera" }), "action_camera").verdict).not.toBe(
        "does_not_fit",
      );
      // A camera whose lenses are changed has no such frame.
      const system = { ...inHousing, lens_interchangeable: true, sensor_diagonal_mm: 43.3 };
      expect(optionOf(mountOn(system), "action_camera").verdict).toBe("does_not_fit");
    },
  );

  it("nothing fits without care where a corner may lose all its light", () => {
    let tried = 0;
    for (let clear = 20; clear <= 80; clear += 2) {
      for (const entrance_pupil_distance_mm of [undefined, 10, 20, 35]) {
        const mount = mountOn({
          port_kind: "flat",
          lens_kind: "wide",
          focal_length_mm: 18,
          sensor_diagonal_mm: 28.4,
          lens_thread_mm: 67,
          port_thread_mm: 67,
          filter_clear_diameter_mm: clear,
          ...(entrance_pupil_distance_mm === undefined ? {} : { entrance_pupil_distance_mm }),
          holder: "screw_on_port",
        });
        if (mount.holder !== "screw_on_port") continue;
        tried++;
        const { low, high, likely } = mount.vignetting.corner_light_percent;
        if (low === 0) expect(mount.verdict).not.toBe("fits");
        if (likely === 0 && high < 50) expect(mount.verdict).toBe("does_not_fit");
        if (mount.verdict === "fits") expect(low).toBeGreaterThanOrEqual(50);
      }
    }
    expect(tried).toBeGreaterThan(40);
  });

  it("a clip asks for the port's outer diameter, and is judged by it", () => {
    const { port_thread_mm: _, ...smooth } = POCKET;
    const clipped = (more: object) =>
      optionOf(mountOn({ ...smooth, filter_clear_diameter_mm: 90, ...more, holder: "clip_on" }), "clip_on");
    expect(clipped({})).toMatchObject({ verdict: "fits_with_care", code: "mount_clip_seat_unknown" });
    expect(clipped({ port_outer_diameter_mm: 84 }).verdict).toBe("fits");
    expect(clipped({ port_outer_diameter_mm: 84, holder_inner_diameter_mm: 85 }).verdict).toBe("fits");
    expect(clipped({ port_outer_diameter_mm: 84, holder_inner_diameter_mm: 80 })).toMatchObject({
      verdict: "does_not_fit",
      code: "mount_holder_too_small",
    });
    expect(clipped({ port_outer_diameter_mm: 84, holder_inner_diameter_mm: 95 })).toMatchObject({
      verdict: "does_not_fit",
      code: "mount_holder_too_large",
    });
    expect(codesOf(mountOn({ ...smooth, port_outer_diameter_mm: 84, holder: "clip_on" }))).toContain(
      "mount_holder_to_ask_for",
    );
  });
});
