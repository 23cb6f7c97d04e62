import { describe, expect, it } from "vitest";
import {
  BRIGHT_REEF,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
} from "../../../../test/support/scenes.js";
import type { TakeItem } from "../result/dive-advice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { decided, grey } from "./decided.test-support.js";
import type { Decisions } from "./decisions.js";
import { startOf } from "./legs.js";
import { takeFrom } from "./take.js";

const owning = (d: Decisions, kit: KitItem[]): Decisions => ({ ...d, scene: { ...d.scene, kit } });
const taken = (scene: Scene, ...kit: KitItem[]): TakeItem[] => takeFrom(owning(decided(scene), kit));
const named = (take: readonly TakeItem[]) => take.map(({ id, code, parameters }) => [id, code, parameters]);
const CARD = [undefined, "card", {}];
const DAY = { ...daylightScene("IB", 45, 1.5), max_f_number: 22 };

describe("what to take", () => {
  it("is a card with any kit, and nothing is named without one", () => {
    expect(named(taken(DAY))).toEqual([CARD]);
    expect(takeFrom(decided(DAY))).toEqual([]);
  });

  it("is the filter that was chosen from the kit, by its id and name", () => {
    const d = decided(OUTER_REEF_MORNING);
    const filterNamed = { kind: "red", id: "r45" } as const;
    const chosen = { ...d, filter: { ...d.filter, filter_id: "r45" }, filterNamed };
    expect(named(takeFrom(owning(chosen, [])))).toEqual([
      ["r45", "lens_filter", { filter: filterNamed }],
      CARD,
    ]);
    expect(named(taken(OUTER_REEF_MORNING))).toEqual([CARD]);
  });

  it("is the weakest neutral filter that is enough to within half a click, or the density to get", () => {
    const needed = startOf(decided(BRIGHT_REEF).legs).neutral_density_needed ?? Number.NaN;
    const first = (...kit: KitItem[]) => named(taken(BRIGHT_REEF, ...kit))[0];
    const neutral = (id: string | undefined, density: number) => [id, "neutral_density", { density }];
    expect(first(grey("dense", 3), grey("enough", needed + 0.3), grey("weak", needed - 0.3))).toEqual(
      neutral("enough", needed + 0.3),
    );
    for (const kit of [
      [grey("enough", needed + 0.3), grey("more", needed + 0.6), grey("dense", 3)],
      [grey("more", needed + 0.6), grey("enough", needed + 0.3), grey("dense", 3)],
      [grey("dense", 3), grey("more", needed + 0.6), grey("enough", needed + 0.3)],
    ]) {
      expect(first(...kit)[0]).toBe("enough");
    }
    // A sixth of a stop is a density of 0.05.
    expect(first(grey("close", needed - 0.049))[0]).toBe("close");
    expect(first(grey("weak", needed - 0.051))).toEqual(neutral(undefined, needed));
    expect(first()).toEqual(neutral(undefined, needed));
    // What changes colours, belongs on lamps, or is of unknown density, is no neutral filter for the lens.
    for (const other of [
      { ...grey("red", 2), filter_kind: "red" as const },
      { ...grey("lamp", 2), item: "lamp_filter" as const },
      { id: "some", item: "lens_filter", filter_kind: "neutral" } as const,
    ]) {
      expect(first(other)[0]).toBeUndefined();
    }
    expect(named(taken(DAY, grey("dense", 3)))).toEqual([CARD]);
  });

  it("is the lamps' own filter where the plan has it, or the one that would let them stay on", () => {
    const fight = decided(REEF_WITH_LAMPS);
    const way = fight.middle.ways_out.find(({ way: kind }) => kind === "lamp_filter");
    expect(way?.split_left_delta_e00).toBeLessThan(5);
    const { lamp_filter_kind: kind, lamp_filter_density: density } = way ?? {};
    expect(named(taken(REEF_WITH_LAMPS))).toEqual([
      [undefined, "lamp_filters_lacking", { kind, density }],
      CARD,
    ]);
    const item: KitItem = { id: "soft", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 };
    const lampFilter = { item, split_left_delta_e00: 2 };
    const planned = { ...fight, lampPlan: "lamps_with_filter" as const, lampFilter };
    expect(named(takeFrom(owning(planned, [item])))).toEqual([["soft", "lamp_filters", {}], CARD]);
    // A way that would leave a split seen at a glance is none to get.
    const poor = fight.middle.ways_out.map((out) => ({ ...out, split_left_delta_e00: 5.1 }));
    const hopeless = { ...fight, middle: { ...fight.middle, ways_out: poor } };
    expect(named(takeFrom(owning(hopeless, [])))).toEqual([CARD]);
    // Other ways out need nothing from a shelf.
    const others = fight.middle.ways_out.filter(({ way: kind }) => kind !== "lamp_filter");
    const closer = { ...fight, middle: { ...fight.middle, ways_out: others } };
    expect(others.length).toBeGreaterThan(0);
    expect(named(takeFrom(owning(closer, [])))).toEqual([CARD]);
  });

  it("is every lamp of the kit where the plan uses lamps, and none where it leaves them off or there are none", () => {
    const lamps: KitItem[] = ["left", "right"].map((id) => ({ id, item: "lamp" }));
    const kit = [...lamps, grey("dense", 3)];
    const night = decided(NIGHT_WRECK);
    for (const lampPlan of ["lamps_only", "lamps_lead", "daylight_leads", "lamps_with_filter"] as const) {
      expect(named(takeFrom(owning({ ...night, lampPlan }, kit)))).toEqual([
        ["left", "lamp", {}],
        ["right", "lamp", {}],
        CARD,
      ]);
    }
    for (const lampPlan of ["lamps_off", "none"] as const) {
      expect(named(takeFrom(owning({ ...night, lampPlan }, kit)))).toEqual([CARD]);
    }
  });
});
