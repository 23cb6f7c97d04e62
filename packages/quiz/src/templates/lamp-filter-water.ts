import type { Template } from "../item/template.js";
import { mixAt } from "../light/remembered.js";
import { byDay, twoLamps } from "../light/scenes.js";

const SUN_DEG = 50;
const DISTANCE_M = 1;
const PLACES = [
  ["IB", 10],
  ["IB", 15],
  ["II", 10],
  ["II", 15],
  ["1C", 10],
  ["1C", 15],
  ["3C", 10],
  ["3C", 15],
] as const;
const PAIRS = 3;

/** Which filter on the lights in which water: blue in blue water, green in green water, denser where it is deeper. */
export const lampFilterWater: Template = {
  id: "lamp_filter_water",
  topic: "lamps",
  interaction: "matching",
  levels: ["expert"],
  advises: ["light", "filter_on_land"],
  make({ draw, say, show }) {
    const text = say.more.lamp_filter_water;
    const drawn = draw.sample(PLACES, PAIRS + 1).map(([water, depth_m]) => {
      const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(DISTANCE_M)] }).depths[0];
      const way = mix.ways_out.find((w) => w.way === "lamp_filter");
      return { water, depth_m, kind: way?.lamp_filter_kind, density: way?.lamp_filter_density };
    });
    const filters = drawn.map(({ kind, density }) =>
      kind === undefined || kind === "neutral" || density === undefined
        ? ""
        : text.filter({ kind, density: show.density(density) }),
    );
    if (filters.includes("") || new Set(filters).size < filters.length) return undefined;
    // Two of one colour can be told apart by depth alone; by more than that, learners could not know.
    const sameKind = drawn.filter(({ kind }) => kind === drawn[0]?.kind).length;
    if (sameKind === 0 || sameKind === drawn.length) return undefined;
    if (!tellable(drawn)) return undefined;
    const pairs = drawn.slice(0, PAIRS).map(({ water, depth_m }, i) => ({
      left: text.entry({ water: say.common.water[water], depth: show.m(depth_m) }),
      right: filters[i] ?? "",
    }));
    const spare = filters[PAIRS] ?? "";
    return {
      given: { places: drawn.map(({ water, depth_m }) => `${water} ${depth_m}`) },
      stem: text.stem,
      answer: { interaction: "matching", pairs, spare: [spare], misconception: "filter_colour_of_loss" },
      steps: [{ operation: "judge", text: text.last }],
      sources: ["jerlov_1976", "filter_shapes", "cie_led_illuminants"],
      basis: "computed",
    };
  },
};

interface Place {
  depth_m: number;
  kind?: string | undefined;
  density?: number | undefined;
}

/** Whether of two filters of one colour the deeper place has the denser one, and no two are as deep. */
const tellable = (places: readonly Place[]): boolean =>
  places.every((a, i) =>
    places
      .slice(i + 1)
      .every(
        (b) =>
          a.kind !== b.kind ||
          (a.depth_m !== b.depth_m && a.depth_m > b.depth_m === (a.density ?? 0) > (b.density ?? 0)),
      ),
  );
