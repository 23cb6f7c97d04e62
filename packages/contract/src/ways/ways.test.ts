import { describe, expect, it } from "vitest";
import { wireSchemas } from "../generated/wire-schemas.js";
import { allSceneRules } from "../rules/all-with-mounting.js";
import { mountingRules } from "../rules/mounting.js";
import type { Rule } from "../rules/rule.js";
import type { MountingScene } from "../scene/mounting/scene.js";
import type { Scene } from "../scene/scene.js";
import { waysOf } from "./index.js";
import { fieldsOfWays, isOneWay, type Ways } from "./way.js";

/** Rules of a scene's flat lights that no type says: with them it would be a union of thousands. */
const beyondTypes = new Set(["lamp_colour", "lamp_filter_pair"]);

const values: Record<string, unknown> = {
  port_kind: "flat",
  lens_kind: "wide",
  water_type: "IB",
  water_hue: "blue",
  transfer_curve: "srgb",
  time: "2026-03-10T10:15:00Z",
  local_time: "2026-03-10T10:15",
  time_zone: "Etc/GMT-3",
  filter_kind: "red",
  lamp_filter_kind: "red",
  lamp_led: "LED-B4",
  led: "LED-B4",
  lamps: [{ flux_lm: 1000, distance_m: 1 }],
  kd_samples: [{ wavelength_nm: 450, kd_per_m: 0.1 }],
  card_samples: [{ depth_m: 3, red: 0.2, green: 0.3, blue: 0.4 }],
  filter_transmittance: [{ wavelength_nm: 450, transmittance: 0.2 }],
  filter_samples: [
    {
      red_without: 0.4,
      green_without: 0.5,
      blue_without: 0.4,
      red_with: 0.3,
      green_with: 0.1,
      blue_with: 0.1,
    },
  ],
  locked_exposure: true,
  locked_balance: true,
  min_depth_m: 3,
  max_depth_m: 9,
};

/** What a field that decides the way can be, and a value for any other; absent first. */
function valuesOf({ ways }: Ways, field: string): unknown[] {
  const deciding = [...new Set(ways.flatMap((way) => way.values?.[field] ?? []))];
  return [undefined, ...(deciding.length > 0 ? deciding : [values[field] ?? 1])];
}

/** Every way to have or not to have each field. */
function everySet(of: Ways): Record<string, unknown>[] {
  return fieldsOfWays(of).reduce<Record<string, unknown>[]>(
    (sets, field) => sets.flatMap((set) => valuesOf(of, field).map((value) => ({ ...set, [field]: value }))),
    [{}],
  );
}

const whole = { water_type: "IB", depth_m: 5 };
const scenes: Record<keyof typeof waysOf, (part: Record<string, unknown>, of: Ways) => object> = {
  Scene: (part, of) => {
    const fields = fieldsOfWays(of);
    const rest = Object.entries(whole).filter(([field]) => !fields.includes(field));
    const needed = fields.includes("min_depth_m") ? [] : rest.filter(([field]) => field === "depth_m");
    const water = fields.includes("water_type") ? [] : [["water_type", "IB"] as const];
    return { ...Object.fromEntries([...needed, ...water]), ...part };
  },
  Lamp: (part) => ({ ...whole, lamps: [{ flux_lm: 1000, distance_m: 1, ...part }] }),
  KitItem: (part) => ({ ...whole, kit: [{ id: "a", ...part }] }),
  CardSample: (part) => ({
    depth_m: 5,
    transfer_curve: "srgb",
    card_samples: [{ depth_m: 3, red: 0.2, green: 0.3, blue: 0.4, ...part }],
  }),
  MountingScene: (part, of) => ({
    lens_kind: "wide",
    ...(fieldsOfWays(of).includes("port_kind") ? {} : { port_kind: "flat" }),
    ...(fieldsOfWays(of).includes("field_of_view_deg") ? {} : { field_of_view_deg: 90 }),
    ...part,
  }),
};

function brokenBy(component: keyof typeof waysOf, scene: object): string[] {
  const broken = <S>(rules: readonly Rule<S>[], of: S) =>
    rules.filter((rule) => rule.violations(of).length > 0).map(({ code }) => code);
  const codes =
    component === "MountingScene"
      ? broken<MountingScene>(mountingRules, scene as MountingScene)
      : broken<Scene>(allSceneRules, scene as Scene);
  return component === "Scene" ? codes.filter((code) => !beyondTypes.has(code)) : codes;
}

/** Fields that the schema of the component asks for. */
function required(component: keyof typeof waysOf): readonly string[] {
  return wireSchemas[component].required ?? [];
}

describe.each(Object.keys(waysOf) as (keyof typeof waysOf)[])("the ways of %s", (component) => {
  const named = waysOf[component].map((of): [string, Ways] => [of.says, of]);

  it.each(named)("name fields that it has: %s", (_, of) => {
    const fields = Object.keys(wireSchemas[component].properties ?? {});
    expect(fieldsOfWays(of).filter((field) => !fields.includes(field))).toEqual([]);
  });

  it.each(named)("take what the rules take, and nothing else: %s", (_, of) => {
    const sets = everySet(of).filter((set) =>
      fieldsOfWays(of).every((field) => set[field] !== undefined || !required(component).includes(field)),
    );
    const taken = sets.filter((set) => isOneWay(of, set));
    expect(taken.length).toBeGreaterThan(0);
    expect(taken.length).toBeLessThan(sets.length);
    const wrong = sets.filter((set) => {
      const broken = brokenBy(component, scenes[component](set, of));
      return isOneWay(of, set) !== (broken.length === 0);
    });
    expect(wrong.map((set) => [set, brokenBy(component, scenes[component](set, of))])).toEqual([]);
  });
});
