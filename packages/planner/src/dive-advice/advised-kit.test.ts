// What the plan takes from a kit, and what it lacks.

import {
  BRIGHT_REEF,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { DiveAdviceAnswer, DiveStep } from "../result/dive-advice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { grey } from "./decided.test-support.js";
import { diveAdvice } from "./dive-advice.js";

const stepOf = ({ steps }: DiveAdviceAnswer, code: string): DiveStep | undefined =>
  steps.find((step) => step.code === code);
const flip = (type: string, sun: number, from: number, to: number): Scene => ({
  ...daylightScene(type, sun, from, to),
  filter_change_underwater: "flip",
});

describe("what to take", () => {
  const listed = (scene: Scene) =>
    diveAdvice(scene).take.map(({ code, id }) => (id ? `${code} ${id}` : code));

  it("is the neutral filter that the plan has, by its id or as what is to be had", () => {
    const { iso: _, ...free } = { ...BRIGHT_REEF, f_number: 2.8 };
    expect(listed({ ...free, kit: [grey("enough", 2)] })).toContain("neutral_density enough");
    expect(listed({ ...BRIGHT_REEF, kit: [] })).toContain("neutral_density");
    expect(listed(BRIGHT_REEF)).toContain("neutral_density");
  });

  it("is the lamps also where they stay off, and the filter that would let them stay on where a kit lacks it", () => {
    const red: KitItem = { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 };
    const lamps: KitItem[] = ["left", "right"].map((id) => ({ id, item: "lamp" }));
    expect(listed(REEF_WITH_LAMPS)).toEqual(["lens_filter", "lamp", "card", "spares"]);
    expect(listed({ ...REEF_WITH_LAMPS, kit: [red, ...lamps] })).toEqual([
      "lens_filter red",
      "lamp_filters_lacking",
      "lamp left",
      "lamp right",
      "card",
      "spares",
    ]);
    // On among daylight they lack nothing, and a light to see by belongs to them.
    expect(listed({ ...REEF_WITH_LAMPS, kit: lamps })).toEqual([
      "lamp left",
      "lamp right",
      "dive_light",
      "card",
      "spares",
    ]);
  });

  it("names the change as the mount makes it", () => {
    const change = (mount: Scene["filter_change_underwater"]) =>
      stepOf(diveAdvice({ ...flip("IB", 55, 1, 15), filter_change_underwater: mount }), "filter_in")
        ?.parameters;
    expect(change("flip")).toMatchObject({ mount: "flip" });
    expect(change("clip_on")).toMatchObject({ mount: "clip_on" });
  });

  it("is what the plan uses without a kit, and with one by its ids", () => {
    expect(listed(OUTER_REEF_MORNING)).toEqual(["lens_filter", "card", "spares"]);
    const kit: KitItem[] = [
      { id: "r45", item: "lens_filter", filter_kind: "red", filter_density: 0.45 },
      { id: "m60", item: "lens_filter", filter_kind: "magenta", filter_density: 0.6 },
    ];
    expect(listed({ ...OUTER_REEF_MORNING, kit })).toEqual(["lens_filter r45", "card", "spares"]);
  });

  it("leaves a lamp on the shelf where the scene has none lit", () => {
    const kit: KitItem[] = [{ id: "video", item: "lamp" }];
    expect(listed({ ...OUTER_REEF_MORNING, kit })).toEqual(["card", "spares"]);
    expect(listed({ ...NIGHT_WRECK, kit })).toContain("lamp video");
  });

  it("of an empty kit is a card: nothing is mounted, and the reason says how to learn what would serve", () => {
    const { take, filter_kind, reasons } = diveAdvice({ ...OUTER_REEF_MORNING, kit: [] });
    expect(filter_kind).toBe("none");
    expect(take.map(({ code }) => code)).toEqual(["card", "spares"]);
    expect(reasons.map(({ code }) => code)).toContain("no_filter_owned");
  });
});
