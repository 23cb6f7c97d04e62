/** What becomes of each piece, and what it buys. */
import { reasonsOf } from "../codes/coded.js";
import type { KitAdviceReasons } from "../codes/kit-advice.js";
import { itemAt } from "../lists/non-empty.js";
import type { KitPieceAdvice, PieceOnDive, PieceRole } from "../result/kit-advice.js";
import { type DiveOptions, isNeutralOn, type Option } from "./options.js";
import { has, onlyPiece, type PieceSet } from "./piece-set.js";
import type { KitPiece, KitPlan } from "./plan.js";
import { bestWith } from "./search.js";
import { CLOSE_FROM, probabilityOver, sigmaBetween } from "./spread.js";

const reason = reasonsOf<KitAdviceReasons>();

/** Figures are told to a hundredth: less than half of that is nothing. */
const NOTHING_DELTA_E00 = 0.005;

export interface Found {
  plan: KitPlan;
  dives: readonly DiveOptions[];
  set: PieceSet;
  /** With the set, and with everything, dive by dive. */
  used: readonly Option[];
  best: readonly Option[];
}

/** What each dive loses without a piece of the set, on those on which it counts. */
function losses({ dives, set, used }: Found, place: number): PieceOnDive[] {
  return dives.flatMap(({ dive: { id }, options }, d): PieceOnDive[] => {
    const without = bestWith(options, set & ~onlyPiece(place));
    if (without === undefined) return [{ id }];
    const buys_delta_e00 = without.delta_e00 - itemAt(used, d).delta_e00;
    return buys_delta_e00 < NOTHING_DELTA_E00 ? [] : [{ id, buys_delta_e00 }];
  });
}

/** What each dive would gain with everything where a piece that is left is then used. */
const gains = ({ dives, used, best }: Found, place: number): PieceOnDive[] =>
  dives.flatMap(({ dive: { id } }, d): PieceOnDive[] => {
    const all = itemAt(best, d);
    return has(all.requires, place)
      ? [{ id, buys_delta_e00: itemAt(used, d).delta_e00 - all.delta_e00 }]
      : [];
  });

function roleOf({ plan, dives, set, best }: Found, place: number): PieceRole {
  if (has(set, place)) return "take";
  const { id, item } = itemAt(plan.pieces, place);
  if (item === "lens_filter" && dives.every((dive) => isNeutralOn(dive, id))) return "not_judged";
  return best.some(({ requires }) => has(requires, place)) ? "leave" : "never_used";
}

const most = (on: readonly PieceOnDive[]): number =>
  on.reduce((largest, { buys_delta_e00 = 0 }) => Math.max(largest, buys_delta_e00), 0);

/** Why a piece is taken. */
function whyTaken(found: Found, place: number, on: readonly PieceOnDive[]): KitPieceAdvice["reason"] {
  const { plan, used } = found;
  const { item } = itemAt(plan.pieces, place);
  if (item === "ring" || item === "holder") {
    const held = used.filter(({ requires }) => has(requires, place));
    const filters = held.flatMap(({ filter }) => (filter ? [itemAt(plan.pieces, filter.place).id] : []));
    return reason("piece_holds", "computed", { filters: [...new Set(filters)].sort(), dives: held.length });
  }
  const dark = on.filter(({ buys_delta_e00 }) => buys_delta_e00 === undefined);
  if (dark.length > 0) return reason("piece_lights", "computed", { dives: dark.length });
  return reason("piece_buys", "computed", { dives: on.length, delta_e00: most(on) });
}

/** How likely the set would do without a piece, by the dive that then loses most. */
function needless({ plan, dives, set, best }: Found, place: number): number {
  const left = dives.map(({ options }) => bestWith(options, set & ~onlyPiece(place)));
  const regrets = left.map((option, d) =>
    option === undefined ? Number.POSITIVE_INFINITY : option.delta_e00 - itemAt(best, d).delta_e00,
  );
  const worst = regrets.indexOf(Math.max(...regrets));
  const [option, all] = [left[worst], itemAt(best, worst)];
  if (option === undefined) return 0;
  const over = probabilityOver(
    itemAt(regrets, worst),
    sigmaBetween(option, all),
    plan.regret_limit_delta_e00,
  );
  return 1 - over;
}

function whyLeft({ dives }: Found, { item }: KitPiece, place: number): KitPieceAdvice["reason"] {
  const fitsNowhere = item === "lens_filter" && dives.every(({ fitting }) => !has(fitting, place));
  return reason(fitsNowhere ? "piece_never_fits" : "piece_never_used", "computed", { dives: dives.length });
}

/** Every piece, in the order of their ids. */
export const adviceOnPieces = (found: Found): KitPieceAdvice[] =>
  found.plan.pieces.map((piece, place): KitPieceAdvice => {
    const { id, item } = piece;
    const role = roleOf(found, place);
    const head = { id, item, role, dives: [], verdict: "clear" } as const;
    if (role === "not_judged")
      return {
        ...head,
        dives: [],
        reason: reason("piece_not_judged", "judgement", { dives: found.dives.length }),
      };
    if (role === "never_used")
      return { ...head, dives: [], buys_delta_e00: 0, reason: whyLeft(found, piece, place) };
    const on = role === "take" ? losses(found, place) : gains(found, place);
    const isDark = on.some(({ buys_delta_e00 }) => buys_delta_e00 === undefined);
    const bought = on.reduce((sum, { buys_delta_e00 = 0 }) => sum + buys_delta_e00, 0);
    const told = { ...head, dives: on, ...(isDark ? {} : { buys_delta_e00: bought }) };
    if (role === "leave")
      return {
        ...told,
        reason: reason("piece_spared", "computed", { dives: on.length, delta_e00: most(on) }),
      };
    const probability_needless = needless(found, place);
    return {
      ...told,
      probability_needless,
      verdict: probability_needless >= CLOSE_FROM ? "near_tie" : "clear",
      reason: whyTaken(found, place, on),
    };
  });
