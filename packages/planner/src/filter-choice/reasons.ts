import { stopsToDensity } from "@sunfathom/optics";
import { meteringOf } from "../camera/camera-state.js";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { FilterChoiceReasons } from "../codes/filter-choice.js";
import type { LightReasons } from "../codes/light.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { underwater } from "../light/underwater.js";
import { itemAt, lastOf, mapEach } from "../lists/non-empty.js";
import { lightReason } from "../reasons/light-reason.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { type Candidate, named } from "./candidates.js";
import type { Choice } from "./choose.js";
import { densestTried } from "./densest.js";
import { mainReasons } from "./main-reasons.js";
import { finishOf } from "./merits.js";
import type { UnderFinish } from "./other-finishes.js";

type Reason = CodedReason<FilterChoiceReasons & LightReasons>;

const reason = reasonsOf<FilterChoiceReasons>();

interface Facts extends Choice {
  /** What would be mounted if light were no matter, where that is another filter. */
  moreLight: Candidate | undefined;
  otherwise: readonly UnderFinish[];
}

/** Why this filter, or none: what decides first. */
export function filterReasons(facts: Facts): Reason[] {
  const { conditions, answer } = facts;
  const reasons: Reason[] = [
    ...mainReasons(facts, facts.otherwise),
    ...finishReasons(facts),
    ...densityReasons(facts),
  ];
  const peak = densityPeak(answer);
  if (peak) reasons.push(reason("denser_gains_nothing_below", "computed", peak));
  reasons.push(balanceReason(facts));
  if (conditions.daylight) reasons.push(...lightReasons(facts));
  const trusted_m = redTrustedTo_m(underwater(conditions, NOMINAL));
  if (trusted_m !== undefined && lastOf(answer.depths).depth_m > trusted_m) {
    reasons.push(lightReason("red_not_only_transmitted", "computed", { depth_m: trusted_m }));
  }
  if (answer.filter_kind === "red") reasons.push(reason("filter_trade_rule_blue", "common_practice"));
  if (answer.filter_kind === "magenta") reasons.push(reason("filter_trade_rule_green", "common_practice"));
  reasons.push(reason("filter_shape_assumed", "judgement"));
  return reasons;
}

/** How the picture is finished, and where another finish would turn the choice. */
const finishReasons = ({ conditions, search: { decision }, otherwise }: Facts): Reason[] => [
  reason("finish_judged", "computed", { finish: finishOf(conditions.scene) }),
  ...otherwise
    .filter(({ best }) => best !== decision.advised.candidate)
    .map(({ best, answer }) =>
      reason("finish_turns_choice", "computed", {
        finish: answer.finish,
        filter: named(best),
        error:
          best === decision.runnerUp.candidate
            ? answer.runner_up_colour_error_delta_e00
            : answer.without_colour_error_delta_e00,
        advised_error: answer.advised_colour_error_delta_e00,
      }),
    ),
];

/** What holds the density. */
function densityReasons({ conditions, answer, advised, moreLight, search }: Facts): Reason[] {
  const reasons: Reason[] = [];
  const density = densestTried(search);
  if (density !== undefined) reasons.push(reason("densest_tried", "judgement", { density }));
  if (moreLight) {
    const { iso, f_number } = lastOf(advised.merits).settings;
    reasons.push(
      reason("light_holds_density", "computed", {
        wanted: named(moreLight),
        depth_m: lastOf(answer.depths).depth_m,
        iso,
        f_number,
        shutter_s: conditions.scene.shutter_s,
      }),
    );
  }
  return reasons;
}

/** A fall of the best density by less than this is within what the search resolves. */
const DENSITY_FALLS_BY = 0.1;

/** Depth below which the best density of the advised kind falls again, as light runs out; undefined where it does not in this range. */
function densityPeak({
  filter_kind,
  depths,
}: FilterChoiceFigures): { depth_m: number; density: number } | undefined {
  const best = mapEach(depths, (d) =>
    d.best_filter_kind === filter_kind ? (d.best_filter_density ?? 0) : 0,
  );
  const density = Math.max(...best);
  const depth_m = itemAt(depths, best.indexOf(density)).depth_m;
  return filter_kind !== "none" && density - lastOf(best) >= DENSITY_FALLS_BY
    ? { depth_m, density }
    : undefined;
}

function balanceReason({ answer, search: { judged } }: Facts): Reason {
  const first = answer.depths.find((d) => !d.without_balance_in_reach);
  if (!first) return reason("balance_in_reach_without", "computed");
  const { residual_stops } = lastOf(judged[0].merits).balance;
  const { depth_m } = first;
  const deepest_m = lastOf(answer.depths).depth_m;
  const shortfall = { depth_m, deepest_m, residual_stops };
  if (answer.filter_kind === "none") return reason("balance_out_of_reach", "computed", shortfall);
  const reached = answer.depths.filter((d) => d.advised_balance_in_reach).map((d) => d.depth_m);
  const [reach_from_m, reach_to_m] = [reached[0], reached.at(-1)];
  return reason("filter_brings_balance_into_reach", "computed", {
    ...shortfall,
    ...(reach_from_m === undefined || reach_to_m === undefined ? {} : { reach_from_m, reach_to_m }),
  });
}

/** Judged at the shallow end for too much light and at the deep end for too little. */
function lightReasons({ conditions, search: { judged }, answer }: Facts): Reason[] {
  const metering = meteringOf(conditions.scene, finishOf(conditions.scene));
  const without = judged[0].merits;
  const shallow = without[0];
  const deep = lastOf(without).settings;
  const at = {
    depth_m: lastOf(answer.depths).depth_m,
    f_number: deep.f_number,
    iso: deep.iso,
    metering,
  };
  if (shallow.neutral_stops > FITS_WITHIN_STOPS) {
    return [
      reason("light_is_too_much", "computed", {
        depth_m: answer.depths[0].depth_m,
        excess_stops: shallow.neutral_stops,
        density: stopsToDensity(shallow.neutral_stops),
        iso: shallow.settings.iso,
        f_number: shallow.settings.f_number,
        metering,
      }),
      reason("colour_filter_as_neutral", "computed"),
    ];
  }
  return [
    deep.at_lowest_iso
      ? reason("light_to_spare", "computed", at)
      : reason("light_has_run_out", "computed", { ...at, short_stops: -deep.off_by_stops }),
  ];
}
