import type { Setting } from "../../codes/steps.js";
import type { DivePhase, DiveStep } from "../../result/dive-advice.js";
import { toleranceFor } from "../../white-balance/decide.js";
import type { Balances } from "../../white-balance/rebalance.js";
import type { Decisions } from "../decisions.js";
import { holdsBelow, type Leg, mountOf } from "../legs.js";
import type { Station } from "../station.js";
import { step } from "./step.js";

type Way = Extract<DivePhase, "going_down" | "coming_up">;

/** Stations of one leg, shallow first. */
export const stationsOf = ({ exposure }: Decisions, leg: Leg): Station[] =>
  exposure.stations.filter((station) => station.leg === leg);

/** The filter is changed on passing into a leg, and the camera set and balanced anew. */
export function filterChange(leg: Leg, phase: Way, setting: Setting | undefined): DiveStep[] {
  const depth_m = phase === "going_down" ? leg.top_m : leg.bottom_m;
  const code = leg.filtered ? "filter_in" : "filter_out";
  return setting ? [step({ phase, depth_m }, code, { ...setting, depth_m, mount: mountOf(leg) })] : [];
}

/** Balances of one leg on one way, in a line. */
export function balanceAgain(leg: Leg, phase: Way, { depths_m, reached }: Balances): DiveStep[] {
  const { scene } = leg;
  const [depth_m] = depths_m;
  if (depth_m === undefined) return [];
  const tolerance = toleranceFor(scene);
  const asked = reached > tolerance ? { asked: { tolerance } } : {};
  // The model's own tolerance is a judgement.
  const basis = scene.balance_tolerance_delta_e00 === undefined ? "judgement" : "computed";
  const exposed = scene.exposure_mode === "auto" ? {} : { exposed: true as const };
  return [
    step({ phase, depth_m, basis }, "balance_again", {
      depths_m,
      tolerance: reached,
      ...asked,
      ...exposed,
      ...(phase === "going_down" ? holdsBelow(leg) : {}),
    }),
  ];
}

/** Neutral density comes off, or goes on again, where that lies in a leg. */
export function neutralChange({ exposure }: Decisions, leg: Leg, phase: Way): DiveStep[] {
  const { neutral } = exposure;
  const off = neutral?.off;
  if (!neutral || off?.leg !== leg || neutral.mount === "none") return [];
  const { depth_m } = off;
  const down = phase === "going_down";
  const setting = down ? off.without : off.behind;
  const code = down ? "neutral_off" : "neutral_on";
  return [step({ phase, depth_m }, code, { ...setting, depth_m, mount: neutral.mount })];
}

/**
 * Adds how the exposure follows the light on a way. Where balances are made on the last stretch of it, it is told before them: a card
 * is shot after the exposure is set.
 */
export function withExposure(
  steps: DiveStep[],
  { phase, depth_m }: { phase: Way; depth_m: number },
  code: "deep_exposure" | "shallow_exposure",
  setting: Setting & { stops: number },
): void {
  const isOnWay = steps.at(-1)?.code === "balance_again";
  const told = step(isOnWay ? { phase } : { phase, depth_m }, code, { ...setting, to_m: depth_m });
  steps.splice(isOnWay ? -1 : steps.length, 0, told);
}

/** How the camera is set once these steps are done, from the start of the plan on. */
export function settingAfter({ exposure }: Decisions, steps: readonly DiveStep[]): Setting {
  const set = steps.flatMap(({ parameters }) => ("iso" in parameters ? [parameters as Setting] : []));
  return set.at(-1) ?? exposure.stations[0].setting;
}
