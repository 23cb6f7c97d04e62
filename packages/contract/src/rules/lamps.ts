import { flatLampNames } from "../scene/flat-lamp-names.js";
import { filterPair } from "./filter-pair.js";
import type { Rule, Violation } from "./rule.js";

function oneColour(prefix: string, cct_K: number | undefined, led: string | undefined): Violation[] {
  if (cct_K === undefined || led === undefined) return [];
  const name = prefix.slice(prefix.lastIndexOf("/") + 1);
  return [
    {
      pointer: `${prefix}led`,
      message: "The lamp's colour is given twice.",
      allowed: `${name}cct_K or ${name}led`,
    },
  ];
}

const lampColour: Rule = {
  code: "lamp_colour",
  fields: ["lamps", "lamp_cct_K", "lamp_led"],
  violations: ({ lamps = [], lamp_cct_K, lamp_led }) => [
    ...lamps.flatMap(({ cct_K, led }, index) => oneColour(`/lamps/${index}/`, cct_K, led)),
    ...oneColour("/lamp_", lamp_cct_K, lamp_led),
  ],
};

const lampFilterPair: Rule = {
  code: "lamp_filter_pair",
  fields: ["lamps", "lamp_filter_kind", "lamp_filter_density"],
  violations: ({ lamps = [], lamp_filter_kind, lamp_filter_density }) => [
    ...lamps.flatMap(({ filter_kind, filter_density }, index) =>
      filterPair(`/lamps/${index}/`, filter_kind, filter_density),
    ),
    ...filterPair("/lamp_", lamp_filter_kind, lamp_filter_density),
  ],
};

const lampsOnce: Rule = {
  code: "lamps_once",
  fields: ["lamps", ...flatLampNames],
  violations: (scene) => {
    if (scene.lamps === undefined || flatLampNames.every((name) => scene[name] === undefined)) return [];
    return [
      {
        pointer: "/lamps",
        message: "Lamps are given twice.",
        allowed: "lamps, or fields that begin with lamp_",
      },
    ];
  },
};

const flatLampComplete: Rule = {
  code: "lamp_complete",
  fields: flatLampNames,
  violations: (scene) => {
    const given = flatLampNames.find((name) => scene[name] !== undefined);
    if (given === undefined) return [];
    return (["lamp_flux_lm", "lamp_distance_m"] as const)
      .filter((name) => scene[name] === undefined)
      .map((name) => ({
        pointer: `/${given}`,
        message: `${name} is missing.`,
        allowed: "lamp_flux_lm together with lamp_distance_m",
      }));
  },
};

export const lampRules: readonly Rule[] = [lampColour, lampFilterPair, lampsOnce, flatLampComplete];
