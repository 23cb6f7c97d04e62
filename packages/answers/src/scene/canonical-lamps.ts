import { flatLampNames, lampDefaults, type Scene as WireScene } from "@sunfathom/contract";
import type { Lamp } from "@sunfathom/planner";
import { filled, given } from "./fields.js";

type WireLamp = NonNullable<WireScene["lamps"]>[number];

/** The lamps of a scene as a list, whichever way they were given. */
export function canonicalLamps(wire: WireScene, assumed: string[]): Lamp[] {
  const flat = flatLamp(wire);
  const lamps = flat === undefined ? (wire.lamps ?? []) : [flat];
  return lamps.map((lamp, index) => canonicalLamp(lamp, `lamps/${index}/`, assumed));
}

function flatLamp(wire: WireScene): WireLamp | undefined {
  const { lamp_flux_lm: flux_lm, lamp_distance_m: distance_m } = wire;
  if (flux_lm === undefined || distance_m === undefined) return undefined;
  const flat = given(wire, flatLampNames);
  const lamp = Object.fromEntries(
    Object.entries(flat).map(([name, value]) => [name.slice("lamp_".length), value]),
  );
  return { ...lamp, flux_lm, distance_m };
}

function canonicalLamp(lamp: WireLamp, path: string, assumed: string[]): Lamp {
  type Filled = "count" | "beam_angle_deg";
  const fill = (name: Filled) => filled(lamp[name], lampDefaults[name], `${path}${name}`, assumed);
  return {
    flux_lm: lamp.flux_lm,
    count: fill("count"),
    beam_angle_deg: fill("beam_angle_deg"),
    beam_angle_medium: filled(
      lamp.beam_angle_medium,
      lampDefaults.beam_angle_medium,
      `${path}beam_angle_medium`,
      assumed,
    ),
    ...(lamp.led === undefined
      ? { cct_K: filled(lamp.cct_K, lampDefaults.cct_K, `${path}cct_K`, assumed) }
      : { led: lamp.led }),
    distance_m: lamp.distance_m,
    ...given(lamp, ["filter_kind", "filter_density"]),
  };
}
