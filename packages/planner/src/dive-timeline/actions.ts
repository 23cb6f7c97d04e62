/** What is done on a dive, and when: as it was, or as the plan for it has it, at the times when the dive passed those depths. */
import type { Leg } from "../dive-advice/legs.js";
import { itemAt, type NonEmpty } from "../lists/non-empty.js";
import type { DoneEvent, LensEvent } from "./plan.js";
import type { Profile } from "./profile.js";

interface Action {
  time_s: number;
  event: LensEvent;
}

export interface Actions {
  /** In the order of time; of one moment the change of filter comes first. */
  actions: Action[];
  /** Whether the filter is on the lens when the dive begins. */
  filtered: boolean;
  /** Depths of the plan that the dive never came to, or never came back to. */
  notPassed_m: number[];
}

/**
 * @param isOnCard whether white is balanced by hand
 * @param filmedFrom_s when the first clip begins, if there is one: white is balanced before it
 */
export function plannedActions(
  legs: Readonly<NonEmpty<Leg>>,
  profile: Profile,
  { isOnCard, filmedFrom_s = Infinity }: { isOnCard: boolean; filmedFrom_s?: number | undefined },
): Actions {
  const notPassed_m: number[] = [];
  const actions: Action[] = [];
  const add = (time_s: number | undefined, depth_m: number, event: LensEvent): void => {
    if (event === "balance" && !isOnCard) return;
    if (time_s !== undefined) actions.push({ time_s, event });
    else if (!notPassed_m.includes(depth_m)) notPassed_m.push(depth_m);
  };
  const change = ({ filtered }: Leg): LensEvent => (filtered ? "filter_on" : "filter_off");
  legs.forEach((leg, i) => {
    const passed_s = profile.downTo_s(leg.top_m);
    const top_s = i === 0 && passed_s !== undefined ? Math.min(passed_s, filmedFrom_s) : passed_s;
    if (i > 0) add(top_s, leg.top_m, change(leg));
    add(top_s, leg.top_m, "balance");
    for (const depth_m of leg.down.depths_m) add(profile.downTo_s(depth_m), depth_m, "balance");
  });
  [...legs].reverse().forEach((leg, i) => {
    if (i > 0) {
      const bottom_s = profile.upTo_s(leg.bottom_m);
      add(bottom_s, leg.bottom_m, change(leg));
      add(bottom_s, leg.bottom_m, "balance");
    }
    for (const depth_m of leg.up.depths_m) add(profile.upTo_s(depth_m), depth_m, "balance");
  });
  return { actions: inOrder(actions), filtered: legs[0].filtered, notPassed_m };
}

/** What was done, as told. @param hasFilter whether there is a filter at all */
export function doneActions(events: readonly DoneEvent[], hasFilter: boolean): Actions {
  const change = events.find(({ event }) => event !== "balance");
  return {
    actions: inOrder(events.map(({ time_s, event }) => ({ time_s, event }))),
    // What comes off was on; and what nobody speaks of stays where it is.
    filtered: hasFilter && change?.event !== "filter_on",
    notPassed_m: [],
  };
}

const isBalance = ({ event }: Action): number => (event === "balance" ? 1 : 0);
const inOrder = (actions: Action[]): Action[] =>
  actions.sort((a, b) => a.time_s - b.time_s || isBalance(a) - isBalance(b));

/** The state of lens and balance along a dive. */
export class LensStates {
  constructor(readonly told: Actions) {}

  /** Whether the filter is on at a time. */
  filteredAt(time_s: number): boolean {
    let { filtered } = this.told;
    for (const { time_s: at_s, event } of this.told.actions) {
      if (at_s > time_s) break;
      if (event !== "balance") filtered = event === "filter_on";
    }
    return filtered;
  }

  /** When white was last balanced before, or at, a time. */
  balancedAt(time_s: number): number | undefined {
    let last: number | undefined;
    for (const { time_s: at_s, event } of this.told.actions) {
      if (at_s > time_s) break;
      if (event === "balance") last = at_s;
    }
    return last;
  }

  /** The same for the action of a place in the list: the balance before it. */
  balancedBefore(place: number): number | undefined {
    for (let i = place - 1; i >= 0; i--) {
      const { event, time_s } = itemAt(this.told.actions, i);
      if (event === "balance") return time_s;
    }
    return undefined;
  }

  /** Whether the filter changed since the last balance before a place in the list. */
  changedBefore(place: number): boolean {
    const before = this.told.actions[place - 1];
    return before !== undefined && before.event !== "balance";
  }
}
