// A plan for filters that are to be mounted: what fits goes on and is told how, what does not is refused by name.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { diveAdvice } from "./dive-advice.js";
import { mountedAdvice as adviceOn } from "./mounted-advice.js";

const DEFAULTS = {
  lens_interchangeable: true,
  wet_lens: "none",
  zoom_travel_mm: 0,
  filter_thickness_mm: 5,
  filter_material: "glass",
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
} as const;
/** A compact in its housing: flat port, threads on lens and port. */
const FLAT = {
  ...DEFAULTS,
  port_kind: "flat",
  lens_kind: "standard",
  focal_length_mm: 28,
  sensor_diagonal_mm: 28.4,
  lens_thread_mm: 52,
  port_thread_mm: 67,
  port_outer_diameter_mm: 84,
  filter_thread_mm: 67,
} as const;
/** A fisheye that stays on its camera, behind a dome: no holder takes a filter. */
const NOTHING_FITS = {
  ...DEFAULTS,
  port_kind: "dome",
  dome_radius_mm: 100,
  lens_kind: "fisheye",
  field_of_view_deg: 180,
  sensor_diagonal_mm: 43.3,
  lens_interchangeable: false,
} as const;

/** Without rings, where none are given. */
const mountedAdvice = (scene: Scene) => adviceOn({ rings: [], ...scene }, diveAdvice);

const reef: Scene = daylightScene("IB", 50, 5, 15);
const codes = (all: readonly { code: string }[]) => all.map(({ code }) => code);
const stepOf = (plan: ReturnType<typeof mountedAdvice>, code: string) =>
  plan.steps.find((step) => step.code === code);

/** Codes of what is done to hold the filter, and why. */
function toldBy(plan: ReturnType<typeof mountedAdvice>): { do: string[]; why: string[] } {
  const step = stepOf(plan, "fit_filter");
  return step?.code === "fit_filter"
    ? { do: codes(step.parameters.do), why: codes(step.parameters.why) }
    : { do: [], why: [] };
}

describe("a plan on a mount", () => {
  it("has the figures of the plan without one, and a step that says how the filter is held", () => {
    const plain = diveAdvice(reef);
    const plan = mountedAdvice({ ...reef, ...FLAT });
    expect(plan.filter_density).toBe(plain.filter_density);
    expect(plan.remember).toEqual(plain.remember);
    expect(codes(plan.steps).filter((code) => code !== "fit_filter")).toEqual(codes(plain.steps));
    expect(codes(plan.steps).indexOf("fit_filter")).toBe(1);
    expect(plan.mounting).toMatchObject({ holder: "screw_on_port", place: "before_port", filters: 1 });
    // Outside the housing nothing has to be open.
    expect(stepOf(plan, "mount_filter")?.parameters).toMatchObject({ outside: true });
    const fit = toldBy(plan);
    expect(fit.do).toEqual(expect.arrayContaining(["wall_test", "tether", "no_grit", "no_bubbles"]));
    expect(fit.why).toContain("ghosts_outside");
    expect(codes(plan.cautions)).toEqual(expect.arrayContaining(codes(plain.cautions)));
    expect(codes(plan.cautions)).toContain("mount_makers_instructions");
  });

  it("packs rings that are owned, names the one that lacks, and the holder", () => {
    const ring = { id: "52-67", from_mm: 52, to_mm: 67, thickness_mm: 3 };
    const onLens = { ...FLAT, holder: "screw_on_lens" } as const;
    const { port_thread_mm: _, port_outer_diameter_mm: __, ...smooth } = onLens;
    const owned = mountedAdvice({ ...reef, ...smooth, rings: [ring] });
    expect(owned.take).toContainEqual({ code: "rings", parameters: { rings: ["52-67"] } });
    const lacking = mountedAdvice({ ...reef, ...smooth });
    expect(lacking.take).toContainEqual({ code: "ring_lacking", parameters: { from_mm: 52, to_mm: 67 } });
    const flip = mountedAdvice({ ...reef, ...FLAT, holder: "flip", filter_change_underwater: "flip" });
    expect(flip.take).toContainEqual({ code: "holder", parameters: { holder: "flip" } });
  });

  it("refuses by name a holder that does not fit, and uses the one that does", () => {
    const plan = mountedAdvice({ ...reef, ...FLAT, holder: "clip_on", wet_lens: "wide" });
    const { holder } = plan.mounting ?? {};
    expect(holder).not.toBe("clip_on");
    expect(plan.mounting?.options.find((option) => option.holder === "clip_on")).toMatchObject({
      verdict: "does_not_fit",
      code: "mount_wet_lens_in_the_way",
    });
    expect(plan.summary).toContainEqual({
      code: "mount_asked_does_not_fit",
      parameters: { asked: "clip_on", instead: holder },
    });
    expect(plan.filter_kind).toBe("red");
  });

  it("changes no filter at depth where the only holder does not let it be changed", () => {
    const dive = { ...daylightScene("IB", 55, 1, 15), filter_change_underwater: "flip" } as const;
    expect(codes(diveAdvice(dive).steps)).toContain("filter_in");
    const { port_thread_mm: _, port_outer_diameter_mm: __, ...smooth } = FLAT;
    const wet = { ...smooth, wet_lens: "wide", filter_thread_mm: 52 } as const;
    const plan = mountedAdvice({ ...dive, ...wet });
    expect(plan.mounting).toMatchObject({ holder: "screw_on_lens", filter_change_underwater: "none" });
    expect(codes(plan.steps)).not.toContain("filter_in");
    expect(codes(plan.steps)).not.toContain("carry_filter");
  });

  it("says that nothing fits, leaves the lens bare, and takes off by name what is on it", () => {
    const plan = mountedAdvice({ ...reef, ...NOTHING_FITS, filter_kind: "red", filter_density: 0.8 });
    expect(plan.filter_kind).toBe("none");
    expect(plan.mounting).toMatchObject({ verdict: "does_not_fit", filters: 0 });
    expect(codes(plan.summary)).toContain("mount_nothing_fits");
    expect(stepOf(plan, "no_filter_fits")?.parameters).toMatchObject({
      instead_of: { kind: "red", density: 0.8 },
      why: expect.arrayContaining([{ code: "mount_nothing_fits", parameters: {} }]),
    });
    expect(codes(plan.take)).not.toContain("lens_filter");
    expect(codes(plan.reasons)).not.toContain("no_filter_owned");
  });

  it("mounts no neutral density either where nothing fits", () => {
    const bright = { ...daylightScene("IA", 80, 2, 5), min_iso: 400, f_number: 2.8 };
    expect(codes(diveAdvice(bright).steps)).toContain("neutral_density");
    expect(codes(mountedAdvice({ ...bright, ...NOTHING_FITS }).steps)).not.toContain("neutral_density");
  });

  it("leaves neutral density ashore where two filters, one behind the other, cut the corners off", () => {
    const bright = { ...daylightScene("IA", 80, 2, 5), min_iso: 400, f_number: 2.8 };
    const wanted = codes(diveAdvice(bright).steps);
    expect(wanted).toEqual(expect.arrayContaining(["mount_filter", "neutral_density"]));
    // Every thickness up to one that no longer fits at all: between them lies one that fits alone, and not twice.
    const held = [3, 6, 9, 12, 15, 18, 21, 24, 27, 30].map((filter_thickness_mm) => {
      const { lens_thread_mm: _, ...port } = FLAT;
      const lens = { lens_kind: "wide", focal_length_mm: 15, lens_interchangeable: false } as const;
      const plan = mountedAdvice({ ...bright, ...port, ...lens, filter_thickness_mm });
      const told = toldBy(plan).why.includes("mount_no_room_for_two");
      return { filters: plan.mounting?.filters, told, plan };
    });
    expect(held.map(({ filters }) => filters)).toEqual(expect.arrayContaining([1, 0]));
    for (const { filters, told, plan } of held) {
      expect(codes(plan.steps).includes("neutral_density")).toBe(filters === 2);
      expect(told).toBe(filters === 1);
    }
  });

  it("tells nothing of mounts where nothing goes on the lens", () => {
    const shallow = daylightScene("IB", 40, 0.5);
    expect(diveAdvice(shallow).filter_kind).toBe("none");
    expect(mountedAdvice({ ...shallow, ...FLAT }).mounting).toBeUndefined();
  });
});
