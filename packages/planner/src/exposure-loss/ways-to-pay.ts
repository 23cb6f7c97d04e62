/** How to pay for light that is lost, or get rid of light in excess, within what camera and dive allow. */
import { densityToStops, stopsToDensity } from "@sunfathom/optics";
import { FITS_WITHIN_STOPS, limitsOf, type Settings } from "../camera/exposure-settings.js";
import { codesOf } from "../codes/coded.js";
import type { WaysToPay } from "../codes/ways-to-pay.js";
import { bisect } from "../light/bisect.js";
import type { Conditions } from "../light/conditions.js";
import { daylightUnder } from "../light/daylight.js";
import { highestSun_deg } from "../light/highest-sun.js";
import { hasLensFilter, lensFilterOf } from "../light/lens-filter.js";
import { type Underwater, underwater } from "../light/underwater.js";
import type { WayToPay } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { addLamp } from "./add-lamp.js";
import { budgetAt } from "./budget.js";

const EXACT = 1e-9;

/** A click of a third of a stop: nobody waits hours for less. */
const WORTH_WAITING_STOPS = 1 / 3;

const say = codesOf<WaysToPay>();

interface Task {
  conditions: Conditions;
  depth_m: number;
  ev100: number;
  /** Stops that are missing (above 0), or in excess (below 0), at the settings reached. */
  missing: number;
  settings: Settings;
}

export function waysToPay(
  conditions: Conditions,
  depth_m: number,
  ev100: number,
  settings: Settings,
): WayToPay[] {
  const missing = -settings.off_by_stops;
  const task = { conditions, depth_m, ev100, settings, missing };
  const ways =
    missing > FITS_WITHIN_STOPS
      ? whenDark(task)
      : missing < -FITS_WITHIN_STOPS
        ? whenBright(task)
        : whenItFits(task);
  return ways
    .filter((way): way is WayToPay => way !== undefined && isWithinReason(way))
    .sort((a, b) => Number(b.enough) - Number(a.enough));
}

/** Settings that no camera or lamp has are no way to pay. */
const MOST = { iso: 409600, shutter_s: 60, f_number: 64, neutral_density: 6, lamp_flux_lm: 200000 };

const isWithinReason = (way: WayToPay): boolean =>
  (Object.keys(MOST) as (keyof typeof MOST)[]).every((name) => (way[name] ?? 0) <= MOST[name]);

/** The same exposure, paid by gain or by aperture. */
function whenItFits({ conditions: { scene }, settings }: Task): (WayToPay | undefined)[] {
  const limits = limitsOf(scene);
  // The lens's widest, also where the diver fixed a smaller one: that one is not wide open.
  const widest = scene.min_f_number;
  const iso = settings.iso * (widest / settings.f_number) ** 2;
  const f_number = settings.f_number * Math.sqrt(limits.max_iso / settings.iso);
  const closed = Math.min(f_number, limits.max_f_number);
  const isoClosed = settings.iso * (closed / settings.f_number) ** 2;
  return [
    iso >= limits.min_iso - EXACT
      ? {
          way: "iso",
          ...say("wide_open", { f_number: widest, iso }),
          gains_stops: 0,
          enough: true,
          iso,
          f_number: widest,
        }
      : undefined,
    closed > settings.f_number + EXACT
      ? {
          way: "aperture",
          ...say("depth_of_field", { f_number: closed, iso: isoClosed }),
          gains_stops: 0,
          enough: true,
          iso: isoClosed,
          f_number: closed,
        }
      : undefined,
  ];
}

function whenDark(task: Task): (WayToPay | undefined)[] {
  const { conditions, settings, missing } = task;
  const iso = settings.iso * 2 ** missing;
  return [
    filterOff(task),
    higherSun(task),
    shallower(task),
    addLamp(task),
    longerShutter(task),
    {
      way: "iso",
      ...say("more_gain", { iso, allowed: settings.iso }),
      gains_stops: missing,
      enough: conditions.scene.iso !== undefined && iso <= conditions.scene.max_iso,
      iso,
    },
  ];
}

function whenBright({ conditions, missing, settings }: Task): (WayToPay | undefined)[] {
  const neutral_density = stopsToDensity(-missing);
  const shutter_s = settings.shutter_s * 2 ** missing;
  return [
    closeAperture(conditions.scene, missing, settings),
    {
      way: "neutral_density",
      ...say("neutral_density", {
        density: neutral_density,
        stops: densityToStops(neutral_density),
      }),
      gains_stops: missing,
      enough: true,
      neutral_density,
    },
    {
      way: "shutter",
      ...say("shorter_shutter", { shutter_s }),
      gains_stops: missing,
      enough: true,
      shutter_s,
    },
  ];
}

/** As far as the lens goes; undefined where it is closed already. */
function closeAperture({ max_f_number }: Scene, missing: number, settings: Settings): WayToPay | undefined {
  const wanted = settings.f_number * 2 ** (-missing / 2);
  const f_number = Math.min(wanted, max_f_number);
  const gains_stops = 2 * Math.log2(settings.f_number / f_number);
  if (gains_stops > -EXACT) return undefined;
  const enough = wanted <= max_f_number;
  return {
    way: "aperture",
    ...say("close_aperture", { f_number, enough }),
    gains_stops,
    enough,
    f_number,
  };
}

function filterOff({ conditions, missing, depth_m, ev100 }: Task): WayToPay | undefined {
  const { scene } = conditions;
  if (!hasLensFilter(scene)) return undefined;
  const bare = budgetAt(
    underwater(conditions, NOMINAL),
    lensFilterOf({ filter_change_underwater: "none" }, NOMINAL),
    depth_m,
  );
  const gains_stops = bare.meteredEv100 - ev100;
  return {
    way: "filter_off",
    ...say("filter_off", { gains_stops }),
    gains_stops,
    enough: gains_stops >= missing,
  };
}

const ev100Of = (world: Underwater, depth_m: number): number =>
  budgetAt(world, lensFilterOf(world.scene, NOMINAL), depth_m).meteredEv100;

function higherSun({ conditions, missing, depth_m, ev100 }: Task): WayToPay | undefined {
  if (!conditions.sun) return undefined;
  const sun_elevation_deg = highestSun_deg(conditions);
  if (sun_elevation_deg <= conditions.sun.elevation_deg + 1) return undefined;
  const daylight = daylightUnder({ elevation_deg: sun_elevation_deg }, conditions.scene);
  const sun = { ...conditions.sun, elevation_deg: sun_elevation_deg };
  const gains_stops = ev100Of(underwater({ ...conditions, sun, daylight }, NOMINAL), depth_m) - ev100;
  if (gains_stops < WORTH_WAITING_STOPS) return undefined;
  const said = { elevation_deg: sun_elevation_deg, gains_stops };
  return {
    way: "higher_sun",
    ...say(conditions.sun.instant ? "wait_for_sun" : "if_sun_rises", said),
    gains_stops,
    enough: gains_stops >= missing,
    sun_elevation_deg,
  };
}

/** The deepest depth at which it fits, to a centimetre; undefined where even half a metre is too dark. */
function shallower({ conditions, missing, depth_m, ev100 }: Task): WayToPay | undefined {
  if (!conditions.daylight) return undefined;
  const world = underwater(conditions, NOMINAL);
  const isBright = (depth: number): boolean => ev100Of(world, depth) >= ev100 + missing;
  const least = Math.min(0.5, depth_m);
  if (!isBright(least)) return undefined;
  const fits_m = bisect(isBright, least, depth_m, 0.01);
  return {
    way: "shallower",
    ...say("shallower", { depth_m: fits_m }),
    gains_stops: missing,
    enough: true,
    depth_m: fits_m,
  };
}

function longerShutter({ conditions, missing, settings }: Task): WayToPay | undefined {
  const { frame_rate_fps } = conditions.scene;
  const longest = frame_rate_fps === undefined ? undefined : 1 / frame_rate_fps;
  const shutter_s = Math.min(settings.shutter_s * 2 ** missing, longest ?? Infinity);
  const gains_stops = Math.log2(shutter_s / settings.shutter_s);
  if (gains_stops < EXACT) return undefined;
  return {
    way: "shutter",
    ...say("longer_shutter", { shutter_s, gains_stops }),
    gains_stops,
    enough: gains_stops >= missing - EXACT,
    shutter_s,
  };
}
