import { cautionsFor, cautionsIn } from "../cautions/cautions-for.js";
import { reasonsOf } from "../codes/coded.js";
import type { TripAdviceReasons } from "../codes/trip-advice.js";
import { itemAt } from "../lists/non-empty.js";
import type { GuestPlan, TripAdviceResult, TripDivePlan } from "../result/trip-advice.js";
import { type DiveServed, type GuestServed, serveDive } from "./dive-plan.js";
import { timeOf } from "./dive-time.js";
import { fitsOf, type GuestFits } from "./fittings.js";
import { inUseOf, planFor } from "./guest-plan.js";
import { cratesOf, packingOf } from "./packing.js";
import type { TripPlan } from "./plan.js";
import { type Case, inProportion, type Spread, spreadsOf } from "./spread.js";
import { at } from "./trip-problem.js";

const reason = reasonsOf<TripAdviceReasons>();

const SOURCES = [
  "filter_shapes",
  "filter_merit",
  "chart_24",
  "ciede2000",
  "camera_recording",
  "port_radiance",
];

/**
 * A trip's dives, its guests' cameras and one shelf: who uses what on each dive, what goes into each crate and on the boat. The shelf is
 * handed out anew for each dive. On light and colour only: this plans no dive.
 * @throws TripProblem where the model has no answer for a part of it
 */
export function tripAdvice(plan: TripPlan): TripAdviceResult {
  const times = plan.dives.map((dive, d) => at({ dive: d }, () => timeOf(dive)));
  const fits = fitsOf(plan);
  const served = plan.dives.map((dive, d) => serveDive(dive, d, plan, fits));
  const cases = served.flatMap(({ guests }, d) => guests.map((of, g): Case => ({ d, g, of })));
  const spreads = spreadsOf(cases);
  const dives = plan.dives.map(
    ({ id }, d): TripDivePlan => ({
      id,
      time: itemAt(times, d),
      plans: itemAt(served, d).guests.map((of, g) => guestPlan(itemAt(plan.guests, g).id, of, spreads)),
    }),
  );
  const uncertainty = spreads[0]?.uncertainty ?? [];
  return {
    dives,
    crates: cratesOf(plan, dives),
    packing: packingOf(plan, dives, fits),
    reasons: reasonsFor(plan, { served, fits, spreads }),
    cautions: cautionsOf(cases, uncertainty),
    uncertainty,
    sources: [...new Set(cases.flatMap(sourcesOf))],
  };
}

function guestPlan(guest_id: string, of: GuestServed, spreads: readonly Spread[]): GuestPlan {
  const { served, without, used } = of;
  const spread = spreads.find(({ isFiltered }) => isFiltered === (used !== undefined));
  return {
    guest_id,
    ...(used === undefined ? {} : { piece: inUseOf(used) }),
    ...(served === undefined || without === undefined
      ? {}
      : {
          colour_error_delta_e00: inProportion(spread?.error, served.delta_e00),
          gains_delta_e00: used === undefined ? 0 : without.delta_e00 - served.delta_e00,
        }),
    ...planFor(of),
  };
}

const IN_WATER: readonly string[] = ["before_port", "before_window"];

function cautionsOf(
  cases: readonly Case[],
  uncertainty: TripAdviceResult["uncertainty"],
): TripAdviceResult["cautions"] {
  const own = cases.flatMap(({ of: { light, used, served } }) => {
    const { scene } = light.conditions;
    const isOnCard = served !== undefined && (scene.white_balance_mode ?? "card") === "card";
    const outside = used?.fit !== undefined && IN_WATER.includes(used.fit.place);
    return cautionsFor(scene, {
      uncertainty,
      advises: [
        ...(used === undefined
          ? []
          : [outside ? ("filter_under_water" as const) : ("filter_on_land" as const)]),
        ...(isOnCard ? (["balance"] as const) : []),
        // A night dive is dived by lights.
        ...(served === undefined ? (["light"] as const) : []),
      ],
    }).map(({ code }) => code as string);
  });
  const light = cautionsIn([
    ...own,
    ...(cases.some(({ of }) => of.served === undefined) ? ["overhead_by_training"] : []),
  ]);
  const given = light.map(({ code }) => code as string);
  const mounts = cases.flatMap(({ of: { used } }) => used?.fit?.cautions ?? []);
  const more = new Map(mounts.filter(({ code }) => !given.includes(code)).map((one) => [one.code, one]));
  return [...light, ...more.values()];
}

const sourcesOf = ({ of: { light, used, served } }: Case): readonly string[] => [
  ...light.sources,
  ...(served === undefined ? [] : SOURCES),
  ...(used?.fit?.sources ?? []),
];

interface Found {
  served: readonly DiveServed[];
  fits: readonly GuestFits[];
  spreads: readonly Spread[];
}

function reasonsFor(plan: TripPlan, { served, fits, spreads }: Found): TripAdviceResult["reasons"] {
  const { dives, guests, shelf } = plan;
  const times = served.reduce((sum, { wentWithout }) => sum + wentWithout, 0);
  const unfitted = guests
    .filter((_, g) => shelf.length > 0 && fits[g]?.shelf.length === 0)
    .map(({ id }) => id);
  const careful = guests.filter((_, g) =>
    served.some((of) => of.guests[g]?.used?.fit?.verdict === "fits_with_care"),
  );
  const unknown = guests.filter(({ mount }) => mount === undefined).length;
  const threadless = shelf.filter((one) => one.holder === undefined && one.filter_thread_mm === undefined);
  const assumed = dives.filter(({ isSunAssumed }) => isSunAssumed);
  const dark = dives.filter((_, d) => served[d]?.guests.every((one) => one.served === undefined));
  return [
    reason("trip_handed_out", "judgement", {
      guests: guests.length,
      pieces: shelf.reduce((sum, { quantity }) => sum + quantity, 0),
    }),
    ...(times > 0 ? [reason("trip_shelf_short", "computed", { times })] : []),
    ...(unfitted.length > 0 ? [reason("trip_nothing_fits", "computed", { guests: unfitted })] : []),
    ...(careful.length > 0
      ? [reason("trip_with_care", "computed", { guests: careful.map(({ id }) => id) })]
      : []),
    ...(unknown > 0 ? [reason("trip_fit_not_asked", "judgement", { guests: unknown })] : []),
    ...(threadless.length > 0 && unknown < guests.length
      ? [reason("trip_thread_assumed", "judgement", { pieces: threadless.map(({ id }) => id) })]
      : []),
    ...(assumed.length > 0
      ? [
          reason("trip_sun_assumed", "judgement", {
            dives: assumed.map(({ id }) => id),
            elevation_deg: assumed[0]?.scene.sun_elevation_deg ?? 0,
          }),
        ]
      : []),
    ...(dark.length > 0
      ? [reason("trip_no_daylight", "common_practice", { dives: dark.map(({ id }) => id) })]
      : []),
    reason("trip_stays_on", "judgement"),
    ...spreads.map(({ isFiltered, worst: { d, g } }) =>
      reason("trip_spread_shared", "judgement", {
        with_filter: isFiltered,
        guest: itemAt(guests, g).id,
        dive: itemAt(dives, d).id,
      }),
    ),
  ];
}
