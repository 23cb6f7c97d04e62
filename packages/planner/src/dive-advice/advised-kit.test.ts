// What the plan takes from a kit, and what it lacks.
import { describe, expect, it } from "vitest";
import { saidAdvice } from "../../../../test/support/said.js";
import { daylightScene, NIGHT_WRECK, OUTER_REEF_MORNING } from "../../../../test/support/scenes.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
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
  const bright = { ...daylightScene("I", 70, 2), iso: 800, f_number: 8 };

  it("names the weakest neutral filter owned that is enough where it is too bright, or the density to get", () => {
    const { neutral_density_needed: needed = 0 } = exposureLoss(bright).depths[0];
    expect(needed).toBeGreaterThan(0.3);
    const kit = [grey("weak", 0.1), grey("dense", 2), grey("enough", Math.ceil(needed * 10) / 10)];
    const owned = diveAdvice({ ...bright, kit }).take.find(({ code }) => code === "neutral_density");
    const lacking = diveAdvice({ ...bright, kit: [grey("weak", 0.1)] }).take.find(
      ({ code }) => code === "neutral_density",
    );
    expect(owned?.id).toBe("enough");
    expect(lacking).not.toHaveProperty("id");
    expect(lacking?.parameters).toEqual({ density: needed });
  });

  it("says one density wherever too much light comes up, and offers an aperture only where the lens has it", () => {
    const needed = exposureLoss(bright).depths[0].neutral_density_needed ?? 0;
    const advice = saidAdvice(bright);
    const said = `neutral density ${needed.toFixed(1)}`;
    const texts = [
      advice.summary,
      ...advice.steps.map(({ text }) => text),
      ...advice.reasons.map((r) => r.text),
    ];
    const naming = texts.filter((text) => /neutral density \d/.test(text));
    expect(naming.length).toBeGreaterThanOrEqual(3);
    for (const text of naming) expect(text).toContain(said);
    expect(advice.steps.find(({ code }) => code === "start_exposure")?.text).toContain(
      "f/8 behind the neutral density",
    );
    expect(advice.summary).not.toContain("close down");
    expect(saidAdvice({ ...bright, max_f_number: 45 }).summary).toContain("close down to f/");
  });

  it("names the change as the mount makes it", () => {
    const change = (mount: Scene["filter_change_underwater"]) =>
      stepOf(diveAdvice({ ...flip("IB", 55, 1, 15), filter_change_underwater: mount }), "filter_in")
        ?.parameters;
    expect(change("flip")).toMatchObject({ mount: "flip" });
    expect(change("clip_on")).toMatchObject({ mount: "clip_on" });
  });

  it("is nothing in particular without a kit, and with one only what is in it, or what it lacks, without an id", () => {
    expect(diveAdvice(OUTER_REEF_MORNING).take).toEqual([]);
    const kit: KitItem[] = [
      { id: "r45", item: "lens_filter", filter_kind: "red", filter_density: 0.45 },
      { id: "m60", item: "lens_filter", filter_kind: "magenta", filter_density: 0.6 },
    ];
    const { take, filter_id } = diveAdvice({ ...OUTER_REEF_MORNING, kit });
    expect(filter_id).toBe("r45");
    expect(take.map(({ id }) => id)).toContain("r45");
    for (const { id } of take) expect([undefined, "r45"]).toContain(id);
  });

  it("leaves a lamp on the shelf where the scene has none lit", () => {
    const kit: KitItem[] = [{ id: "video", item: "lamp" }];
    expect(diveAdvice({ ...OUTER_REEF_MORNING, kit }).take.map(({ id }) => id)).toEqual([undefined]);
    expect(diveAdvice({ ...NIGHT_WRECK, kit }).take.map(({ id }) => id)).toContain("video");
  });

  it("of an empty kit is a card: nothing is mounted, and the reason says how to learn what would serve", () => {
    const { take, filter_kind, reasons } = diveAdvice({ ...OUTER_REEF_MORNING, kit: [] });
    expect(filter_kind).toBe("none");
    expect(take.map(({ code }) => code)).toEqual(["card"]);
    expect(reasons.map(({ code }) => code)).toContain("no_filter_owned");
  });
});
