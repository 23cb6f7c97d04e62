/** The short plan of one guest on one dive. */
import { FITS_WITHIN_STOPS, limitsOf, settingsFor } from "../camera/exposure-settings.js";
import { type Coded, codesOf } from "../codes/coded.js";
import type { NamedFilter } from "../codes/named-filter.js";
import type { Exposed } from "../codes/summary.js";
import type { TripPlanCodes } from "../codes/trip-advice.js";
import { handsOf } from "../dive-advice/legs.js";
import { ownedName } from "../dive-advice/owned-name.js";
import { budgetAt } from "../exposure-loss/budget.js";
import { sensitivityFor } from "../exposure-loss/sensitivity.js";
import { handDepth } from "../light/hand-depth.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { underwater } from "../light/underwater.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import type { PieceInUse, TripSetting } from "../result/trip-advice.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { avoidableCast } from "../white-balance/avoidable-cast.js";
import { toleranceFor } from "../white-balance/decide.js";
import { balancesAlong } from "../white-balance/rebalance.js";
import type { GuestServed } from "./dive-plan.js";
import type { Usable } from "./fittings.js";
import type { CameraLight } from "./light.js";

type Part = Coded<TripPlanCodes>;
const say = codesOf<TripPlanCodes>();

/** For less than this nobody takes anything against too much light: as in a dive's plan. */
const WORTH_DARKENING_STOPS = 1;

const named = ({ piece }: Usable): NamedFilter => ownedName(piece);

export function inUseOf(usable: Usable): PieceInUse {
  const { piece, from, fit } = usable;
  const { kind, density } = named(usable);
  return {
    piece_id: piece.id,
    from,
    filter_kind: kind,
    ...(density === undefined ? {} : { filter_density: density }),
    ...(fit === undefined ? {} : { holder: fit.holder, verdict: fit.verdict }),
    rings: fit?.rings ?? [],
  };
}

function mountPart(used: Usable | undefined): Part {
  if (used === undefined) return say("no_filter");
  const { from, fit } = used;
  return say("trip_mount", {
    filter: named(used),
    from,
    ...(fit === undefined ? {} : { holder: fit.holder }),
    rings: (fit?.rings ?? []).map(({ ring_id }) => ring_id),
  });
}

/** Settings at both ends of the filmed depths, as the camera meters the subject there. */
function settingsOf({ depths, conditions }: CameraLight, used: Usable | undefined): NonEmpty<TripSetting> {
  const scene = behind(conditions.scene, used);
  const filter = lensFilterOf(scene, NOMINAL);
  const world = underwater(conditions, NOMINAL);
  const of = (depth_m: number): TripSetting => {
    const { meteredEv100 } = budgetAt(world, filter, depth_m);
    const { iso, f_number, shutter_s, off_by_stops } = settingsFor(
      sensitivityFor(meteredEv100),
      limitsOf(scene),
    );
    return { depth_m, iso, f_number, shutter_s, off_by_stops };
  };
  return depths.length === 1 ? [of(depths[0])] : [of(depths[0]), of(lastOf(depths))];
}

function exposeParts(scene: Scene, settings: Readonly<NonEmpty<TripSetting>>): Part[] {
  const [first, last] = [settings[0], lastOf(settings)];
  const exposed = ({ depth_m, iso, f_number }: TripSetting): Exposed => ({ depth_m, iso, f_number });
  const dark = -last.off_by_stops;
  if (dark > FITS_WITHIN_STOPS) return [say("too_dark", { depth_m: last.depth_m, shortfall_stops: dark })];
  if (scene.exposure_mode === "auto") return [say("expose_by_itself")];
  return [
    say(
      "expose",
      settings.length === 1 ? { from: exposed(first) } : { from: exposed(first), to: exposed(last) },
    ),
    ...(first.off_by_stops >= WORTH_DARKENING_STOPS
      ? [say("trip_too_bright", { depth_m: first.depth_m, excess_stops: first.off_by_stops })]
      : []),
  ];
}

/** The scene with the filter on the lens. */
function behind(scene: Scene, used: Usable | undefined): Scene {
  if (used === undefined) return scene;
  const { filter_kind, filter_density, filter_transmittance } = used.piece;
  return {
    ...scene,
    ...(filter_kind === undefined || filter_density === undefined ? {} : { filter_kind, filter_density }),
    ...(filter_transmittance === undefined ? {} : { filter_transmittance }),
  };
}

/** Balances that follow the first one on the way down, as in a dive's plan. */
function balancePart({ conditions }: CameraLight, used: Usable | undefined): Part {
  const scene = behind(conditions.scene, used);
  const { white_balance_mode: mode = "card", white_balance_kelvin_K: cct_K } = scene;
  if (mode === "auto") return say("balance_by_itself");
  if (mode === "kelvin" && cct_K !== undefined) return say("balance_in_kelvin", { cct_K });
  const filmed = { ...conditions, scene };
  const top_m = handDepth(scene.min_depth_m, scene);
  const way = { balanced_m: top_m, from_m: top_m, to_m: scene.max_depth_m };
  const shift = avoidableCast(filmed, underwater(filmed, NOMINAL));
  return say("balance", {
    again: balancesAlong(way, toleranceFor(scene), shift, handsOf(scene)).depths_m.length,
  });
}

/** @returns the plan as codes, and the settings that it names */
export function planFor({ light, served, used }: GuestServed): { plan: Part[]; settings: TripSetting[] } {
  if (served === undefined) return { plan: [say("trip_without_daylight")], settings: [] };
  const settings = settingsOf(light, used);
  const { scene } = light.conditions;
  return { plan: [mountPart(used), ...exposeParts(scene, settings), balancePart(light, used)], settings };
}
