import { flatLampNames } from "../scene/flat-lamp-names.js";
import { filterPair, type HalfFilter } from "./filter-pair.js";
import { broken, type Nothing, type RuleOf, type Violation } from "./rule.js";

function oneColour(
  prefix: string,
  cct_K: number | undefined,
  led: string | undefined,
): Violation<{ fields: readonly string[] }>[] {
  if (cct_K === undefined || led === undefined) return [];
  const name = prefix.slice(prefix.lastIndexOf("/") + 1);
  return [broken(`${prefix}led`, { fields: [`${name}cct_K`, `${name}led`] })];
}

const lampColour: RuleOf<"lamp_colour", { fields: readonly string[] }> = {
  code: "lamp_colour",
  violations: ({ lamps = [], lamp_cct_K, lamp_led }) => [
    ...lamps.flatMap(({ cct_K, led }, index) => oneColour(`/lamps/${index}/`, cct_K, led)),
    ...oneColour("/lamp_", lamp_cct_K, lamp_led),
  ],
};

const lampFilterPair: RuleOf<"lamp_filter_pair", HalfFilter> = {
  code: "lamp_filter_pair",
  violations: ({ lamps = [], lamp_filter_kind, lamp_filter_density }) => [
    ...lamps.flatMap(({ filter_kind, filter_density }, index) =>
      filterPair(`/lamps/${index}/`, filter_kind, filter_density),
    ),
    ...filterPair("/lamp_", lamp_filter_kind, lamp_filter_density),
  ],
};

const lampsOnce: RuleOf<"lamps_once", Nothing> = {
  code: "lamps_once",
  violations: (scene) => {
    if (scene.lamps === undefined || flatLampNames.every((name) => scene[name] === undefined)) return [];
    return [broken("/lamps", {})];
  },
};

const flatLampComplete: RuleOf<"lamp_complete", { missing: string }> = {
  code: "lamp_complete",
  violations: (scene) => {
    const given = flatLampNames.find((name) => scene[name] !== undefined);
    if (given === undefined) return [];
    return (["lamp_flux_lm", "lamp_distance_m"] as const)
      .filter((name) => scene[name] === undefined)
      .map((missing) => broken(`/${given}`, { missing }));
  },
};

const leadDistanceWithStops: RuleOf<"lead_distance_with_stops", Nothing> = {
  code: "lead_distance_with_stops",
  violations: ({ wanted_lead_distance_m, wanted_lead_stops }) =>
    wanted_lead_distance_m === undefined || wanted_lead_stops !== undefined
      ? []
      : [broken("/wanted_lead_distance_m", {})],
};

export const lampRules = [
  lampColour,
  lampFilterPair,
  lampsOnce,
  flatLampComplete,
  leadDistanceWithStops,
] as const;
