import {
  add,
  CLEAR,
  FIRST_NM,
  filterTransmittance,
  illuminance_lx,
  multiply,
  type Spectrum,
  STEP_NM,
} from "@sunfathom/optics";
import { castBetween } from "../camera/cast.js";
import { perPlace } from "../camera/matrix.js";
import { rawOf, type SensorProfile } from "../camera/sensor-profile.js";
import { codesOf } from "../codes/coded.js";
import type { WaysOut } from "../codes/ways-out.js";
import { lampSpectrum } from "../light/lamps.js";
import { lampLightAt, type Underwater } from "../light/underwater.js";
import { valueAt } from "../lists/non-empty.js";
import type { WayOut } from "../result/mixed-light.js";
import type { TransmittanceSample } from "../scene/scene.js";
import { type Both, VISIBLE_SPLIT_DELTA_E00 } from "./lights.js";

/**
 * Lamp filters are searched from 0.15 to 1.5 in steps of half a stop: denser ones keep nearly all of the light in their band, and the
 * heat with it. Common practice, no published source.
 */
const LAMP_DENSITIES = Array.from({ length: 10 }, (_, i) => Math.round((i + 1) * 15) / 100);
const CURVE_NM = Array.from({ length: 9 }, (_, i) => 450 + 25 * i);
/** Lamp distances are searched from a tenth of today's in steps of a twentieth. */
const CLOSER_STEPS = Array.from({ length: 18 }, (_, i) => (18 - i) / 20);

const say = codesOf<WaysOut>();

export interface Lights extends Both {
  world: Underwater;
}

/** What can be done where lamps and daylight fight, the least split first, the cheapest of equals first. */
export function waysOut(lights: Lights): WayOut[] {
  const ways = [
    lampsOff(lights),
    lampFilterWay(lights),
    balanceToLamps(lights),
    balanceToBoth(lights),
    comeCloser(lights),
  ];
  return ways
    .filter((way): way is WayOut => way !== undefined)
    .sort((a, b) => a.split_left_delta_e00 - b.split_left_delta_e00 || a.cost_stops - b.cost_stops);
}

const stops = (from: Spectrum, to: Spectrum): number => Math.log2(illuminance_lx(from) / illuminance_lx(to));

function lampsOff({ daylight, lamps }: Lights): WayOut {
  const cost_stops = stops(add(daylight, lamps), daylight);
  return {
    way: "lamps_off",
    ...say("lamps_off", { cost_stops }),
    split_left_delta_e00: 0,
    cost_stops,
  };
}

/** Kinds made for lamps: to match them to the daylight of blue water and of green. */
const LAMP_KINDS = ["blue", "green"] as const;

/** The filter that turns the lamps' colour into daylight's, as far as the kinds made for it can. */
function lampFilterWay({ world, profile, daylight, lamps }: Lights): WayOut {
  const candidates = LAMP_KINDS.flatMap((kind) =>
    LAMP_DENSITIES.map((density) => {
      const filter = filterTransmittance(kind, density);
      const filtered = lampLightAt(world, { filter });
      return {
        kind,
        density,
        filter,
        filtered,
        split: castBetween(profile, daylight, add(daylight, filtered)),
      };
    }),
  );
  const best = candidates.reduce((a, b) => (b.split < a.split ? b : a));
  const unfiltered = lampLightAt(world, { filter: CLEAR });
  const needed = neededTransmittance(profile, daylight, unfiltered);
  const cost_stops = stops(add(daylight, lamps), add(daylight, best.filtered));
  // A lamp's flux is that of its light without a filter, and the spectrum is per lumen of it.
  const lamp_flux_left_lm = world.scene.lamps.map(
    (lamp) => lamp.flux_lm * illuminance_lx(multiply(lampSpectrum(lamp), best.filter)),
  );
  return {
    way: "lamp_filter",
    ...say("lamp_filter", {
      ...needed,
      kind: best.kind,
      density: best.density,
      is_seen: best.split > VISIBLE_SPLIT_DELTA_E00,
    }),
    split_left_delta_e00: best.split,
    cost_stops,
    lamp_filter_kind: best.kind,
    lamp_filter_density: best.density,
    lamp_filter_red_transmittance: needed.red,
    lamp_filter_green_transmittance: needed.green,
    lamp_filter_blue_transmittance: needed.blue,
    lamp_filter_transmittance: neededCurve(daylight, unfiltered),
    lamp_flux_left_lm,
  };
}

/** Per channel, what a filter on the lamps must let through to match daylight, relative to its clearest channel. */
function neededTransmittance(profile: SensorProfile, daylight: Spectrum, lamps: Spectrum) {
  const target = rawOf(profile, daylight);
  const own = rawOf(profile, lamps);
  const wanted = perPlace((k) => target[k] / own[k]);
  const top = Math.max(...wanted);
  const [red, green, blue] = perPlace((k) => wanted[k] / top);
  return { red, green, blue };
}

/** The curve that would match exactly, from 450 to 650 nm in 25 nm, 1 at its clearest point. */
function neededCurve(daylight: Spectrum, lamps: Spectrum): TransmittanceSample[] {
  const samples = CURVE_NM.map((wavelength_nm) => {
    const i = (wavelength_nm - FIRST_NM) / STEP_NM;
    return { wavelength_nm, ratio: valueAt(daylight, i) / valueAt(lamps, i) };
  });
  const top = Math.max(...samples.map(({ ratio }) => ratio));
  return samples.map(({ wavelength_nm, ratio }) => ({ wavelength_nm, transmittance: ratio / top }));
}

function balanceToLamps({ profile, daylight, lamps }: Lights): WayOut {
  return {
    way: "balance_to_lamps",
    ...say("balance_to_lamps"),
    split_left_delta_e00: castBetween(profile, lamps, add(daylight, lamps)),
    cost_stops: 0,
  };
}

/** What only daylight lights is then the split. */
function balanceToBoth({ profile, daylight, lamps }: Lights): WayOut {
  return {
    way: "balance_to_both",
    ...say("balance_to_both"),
    split_left_delta_e00: castBetween(profile, add(daylight, lamps), daylight),
    cost_stops: 0,
  };
}

/** The largest distance at which the lamps, balanced to, hide daylight on the subject; undefined where none within reach does. */
function comeCloser({ world, profile, daylight, lamps }: Lights): WayOut | undefined {
  const now = Math.min(...world.scene.lamps.map((lamp) => lamp.distance_m));
  for (const share of CLOSER_STEPS) {
    const lamp_distance_m = now * share;
    const closer = lampLightAt(world, { distance_m: lamp_distance_m });
    const split = castBetween(profile, closer, add(daylight, closer));
    if (split > VISIBLE_SPLIT_DELTA_E00) continue;
    return {
      way: "come_closer",
      ...say("come_closer", { distance_m: lamp_distance_m }),
      split_left_delta_e00: split,
      cost_stops: stops(add(daylight, lamps), add(daylight, closer)),
      lamp_distance_m,
    };
  }
  return undefined;
}
