import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { filterMounting } from "../filter-mounting/filter-mounting.js";
import { itemAt } from "../lists/non-empty.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { DiveProblem } from "./dive-problem.js";
import { findKit, kitAdvice } from "./kit-advice.js";
import { errorIn, lightingsOf } from "./lighting.js";
import type { KitPiece, KitPlan } from "./plan.js";
import { waysToMount } from "./ways-to-mount.js";

const FILTERS: KitItem[] = [
  { id: "a-red", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
  { id: "b-red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 },
  { id: "c-magenta", item: "lens_filter", filter_kind: "magenta", filter_density: 0.6 },
];
const RANGE = daylightScene("IB", 45, 5, 18);
const REEF = daylightScene("IB", 45, 12);
const HARBOUR = daylightScene("5C", 45, 8);
const LENS: FilterMountingScene = {
  port_kind: "flat",
  lens_kind: "standard",
  focal_length_mm: 28,
  sensor_diagonal_mm: 28.4,
  f_number: 8,
  wet_lens: "none",
  zoom_travel_mm: 0,
  lens_interchangeable: true,
  lens_thread_mm: 52,
  filter_thickness_mm: 5,
  filter_material: "glass",
  rings: [],
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
  filter_change_underwater: "none",
};
const { f_number: _, ...ON_LENS } = LENS;
const asPieces = (items: readonly KitItem[]): KitPiece[] =>
  items.map(({ id, item }) => ({ id, item: item as "lens_filter" | "lamp_filter" }));

function planFor(
  scenes: Readonly<Record<string, Scene>>,
  pieces: readonly KitPiece[],
  kit = FILTERS,
): KitPlan {
  const dives = Object.entries(scenes).map(([id, scene]) => ({ id, scene: { ...scene, kit } }));
  return { dives, pieces, regret_limit_delta_e00: 1, limit_is_own: false } as unknown as KitPlan;
}

describe("what each piece leaves on a dive", () => {
  it("is what the choice of a filter says of it", () => {
    const scene = { ...RANGE, kit: FILTERS };
    const [day] = lightingsOf(scene, []);
    const { ranking = [] } = filterChoice(scene);
    expect(ranking).toHaveLength(4);
    for (const { filter_id, colour_error_delta_e00 } of ranking) {
      const nth = filter_id === undefined ? 0 : 1 + FILTERS.findIndex(({ id }) => id === filter_id);
      expect(day && errorIn(day, nth, false)).toBeCloseTo(colour_error_delta_e00.likely, 9);
    }
  });

  it("is lit as mixed light says that lights and daylight go together", () => {
    const light: KitPiece = { id: "light", item: "lamp", lamp: TWO_LAMPS };
    for (const scene of [
      HARBOUR,
      atNight(HARBOUR),
      daylightScene("IB", 60, 3),
      daylightScene("7C", 20, 15),
    ]) {
      const { verdict } = itemAt(mixedLight({ ...scene, lamps: [TWO_LAMPS] }).depths, 0);
      const uses = lightingsOf(scene, [light]).map(({ use }) => use);
      expect(uses).toContain(verdict === "lights_fight" ? "lamps_with_daylight" : verdict);
    }
  });

  it("under lights that lead is what the choice of a filter says of that scene", () => {
    const lit = { ...daylightScene("7C", 20, 15), kit: FILTERS, lamps: [TWO_LAMPS] };
    const lighting = itemAt(
      lightingsOf({ ...lit, lamps: [] }, [{ id: "l", item: "lamp", lamp: TWO_LAMPS }]),
      1,
    );
    expect(lighting.use).toBe("lamps_lead");
    const { ranking = [] } = filterChoice(lit);
    const bare = ranking.find(({ filter_id }) => filter_id === undefined);
    expect(errorIn(lighting, 0, false)).toBeCloseTo(bare?.colour_error_delta_e00.likely ?? Number.NaN, 9);
  });
});

describe("a filter counts where it fits", () => {
  const filter: KitPiece = { id: "red-67", item: "lens_filter", filter_thread_mm: 67 };
  const rings: KitPiece[] = [
    { id: "52-60", item: "ring", from_mm: 52, to_mm: 60, thickness_mm: 2.5 },
    { id: "60-67", item: "ring", from_mm: 60, to_mm: 67, thickness_mm: 2.5 },
    { id: "67-52", item: "ring", from_mm: 67, to_mm: 52, thickness_mm: 2.5 },
  ];
  const scene: Scene = { ...REEF, ...ON_LENS };

  it("with the very rings that filter-mounting screws on, and without them nowhere", () => {
    expect(waysToMount(scene, filter, 8, [filter])).toEqual([]);
    const ways = waysToMount(scene, filter, 8, [filter, ...rings]);
    const { ring_chain, options } = filterMounting({
      ...LENS,
      filter_thread_mm: 67,
      rings: rings.map(({ item: _item, ...ring }) => ring as never),
    });
    expect(ring_chain?.rings.map(({ id }) => id)).toEqual(["52-60", "60-67"]);
    expect(ways.map(({ requires }) => requires)).toEqual([0b110]);
    expect(ways[0]?.verdict).toBe(options.find(({ holder }) => holder === "screw_on_lens")?.verdict);
  });

  it("and a ring is bought by what it lets fit", () => {
    const kit = [{ ...itemAt(FILTERS, 1), id: "red-67" }];
    const ring: KitPiece = { id: "ring", item: "ring", from_mm: 52, to_mm: 67, thickness_mm: 3 };
    const advice = kitAdvice(planFor({ reef: scene }, [filter, ring], kit));
    expect(advice.take).toEqual(["red-67", "ring"]);
    expect(itemAt(advice.dives, 0)).toMatchObject({ filter_id: "red-67", held_by: ["ring"] });
    const [bought, buys] = advice.pieces;
    expect(buys?.reason).toMatchObject({
      code: "piece_holds",
      parameters: { filters: ["red-67"], dives: 1 },
    });
    expect(buys?.buys_delta_e00).toBe(bought?.buys_delta_e00);
    const without = kitAdvice(planFor({ reef: scene }, [filter], kit));
    expect(without.take).toEqual([]);
    expect(without.pieces[0]?.reason.code).toBe("piece_never_fits");
  });

  it("a hinge lets the diver change where the dive says nothing of a port", () => {
    const hinge: KitPiece = { id: "hinge", item: "holder", holder: "flip" };
    const ways = waysToMount(REEF, { id: "f", item: "lens_filter" }, 8, [hinge]);
    expect(ways).toEqual([
      { requires: 0, changeable: false },
      { requires: 1, changeable: true, holder: "flip" },
    ]);
  });
});

describe("a kit", () => {
  const plan = planFor({ harbour: HARBOUR, night: atNight(HARBOUR), reef: REEF }, [
    ...asPieces(FILTERS),
    { id: "light", item: "lamp", lamp: TWO_LAMPS },
  ]);
  const advice = kitAdvice(plan);

  it("loses less than the limit on every dive, and no smaller one does", () => {
    const { dives, set } = findKit(plan);
    for (const { regret_delta_e00 } of advice.dives) expect(regret_delta_e00.likely).toBeLessThan(1);
    for (let smaller = 0; smaller < 16; smaller += 1) {
      if (smaller.toString(2).split("1").length >= set.toString(2).split("1").length) continue;
      const losses = dives.map(({ options }) => {
        const [own, all] = [smaller, 15].map((of) => options.find(({ requires }) => (requires | of) === of));
        return own && all ? own.delta_e00 - all.delta_e00 : Number.POSITIVE_INFINITY;
      });
      expect(Math.max(...losses)).toBeGreaterThanOrEqual(1);
    }
  });

  it("has a light for a dive at night, and says that nothing is filmed without", () => {
    expect(advice.take).toContain("light");
    const light = advice.pieces.find(({ id }) => id === "light");
    expect(light).toMatchObject({ role: "take", reason: { code: "piece_lights" } });
    expect(light?.buys_delta_e00).toBeUndefined();
    expect(light?.dives).toContainEqual({ id: "night" });
    const night = advice.dives.find(({ id }) => id === "night");
    expect(night).toMatchObject({ light_use: "lamps_only", light_id: "light" });
    expect(night?.colour_error_without_delta_e00).toBeUndefined();
    expect(advice.cautions.map(({ code }) => code)).toContain("lamps_not_into_eyes");
  });

  it("says of each dive how sure it is, around what it says", () => {
    for (const { regret_delta_e00: regret, colour_error_delta_e00: error, ...dive } of advice.dives) {
      for (const { low, likely, high } of [regret, error]) {
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(0);
      }
      expect(error.likely - regret.likely).toBeCloseTo(dive.colour_error_whole_kit_delta_e00, 9);
      expect(dive.verdict).toBe(dive.probability_over_limit >= 0.25 ? "near_tie" : "clear");
    }
  });

  it("judges no neutral density by its colour, and names its limit a judgement", () => {
    const kit: KitItem[] = [
      ...FILTERS,
      { id: "nd", item: "lens_filter", filter_kind: "neutral", filter_density: 0.6 },
    ];
    const { pieces, reasons } = kitAdvice(planFor({ reef: REEF }, asPieces(kit), kit));
    expect(pieces.find(({ id }) => id === "nd")?.role).toBe("not_judged");
    expect(reasons).toContainEqual({
      code: "kit_limit_judged",
      basis: "judgement",
      parameters: { limit_delta_e00: 1 },
    });
  });

  it("names the filter of the planner's grid that would help most where the pieces are of no use", () => {
    const kit: KitItem[] = [{ id: "blue", item: "lens_filter", filter_kind: "blue", filter_density: 0.6 }];
    const { take, pieces, one_more } = kitAdvice(planFor({ reef: REEF }, asPieces(kit), kit));
    expect(take).toEqual([]);
    expect(pieces[0]?.role).toBe("never_used");
    const { filter_kind, colour_error_delta_e00, colour_error_without_delta_e00 } = filterChoice(REEF);
    expect(one_more?.filter_kind).toBe(filter_kind);
    // The choice looks at finer densities as well, and takes the weakest of those that are as good to a tenth.
    expect(one_more?.gains_delta_e00).toBeCloseTo(
      colour_error_without_delta_e00.likely - colour_error_delta_e00.likely,
      0,
    );
  });

  it("cannot be made for a dive without light and without lights", () => {
    expect(() => kitAdvice(planFor({ reef: REEF, wreck: atNight(REEF) }, asPieces(FILTERS)))).toThrow(
      DiveProblem,
    );
  });
});
