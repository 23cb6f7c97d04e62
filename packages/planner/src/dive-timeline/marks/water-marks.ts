import { LossesOfScene } from "../../attenuation/losses.js";
import type { Reason } from "../../codes/coded.js";
import { reasonsOf } from "../../codes/coded.js";
import type { MarkReasons } from "../../codes/dive-timelines.js";
import type { Conditions } from "../../light/conditions.js";
import { underwater } from "../../light/underwater.js";
import { itemAt, valueAt } from "../../lists/non-empty.js";
import type { Estimate } from "../../result/common.js";
import type { TimelineMark } from "../../result/dive-timelines.js";
import { causesOf } from "../../uncertainty/causes.js";
import type { Nuisance } from "../../uncertainty/nuisance.js";
import { propagate } from "../../uncertainty/propagate.js";
import type { FittedWater } from "./fitted-water.js";
import { agrees, estimateFrom, evenly, type Shift } from "./spread.js";

const reason = reasonsOf<MarkReasons>();
const CHANNELS = ["red", "green", "blue"] as const;

/** Mean attenuation of each channel's light between two depths, 1/m. */
export function channelKd(
  conditions: Conditions,
  nuisance: Nuisance,
  { from_m, to_m }: { from_m: number; to_m: number },
): Record<(typeof CHANNELS)[number], number> {
  const depths = { first_m: from_m, step_m: to_m - from_m, count: 2 };
  const losses = new LossesOfScene(conditions, depths).in(underwater(conditions, nuisance));
  const of = (column: Float64Array): number =>
    (Math.LN2 * (valueAt(column, 1) - valueAt(column, 0))) / (to_m - from_m);
  return { red: of(losses.red), green: of(losses.green), blue: of(losses.blue) };
}

/**
 * How fast light fades, as the site's water has it and as the cards show it.
 * @param site conditions of the site as it was described
 */
export function waterMarks(site: Conditions, water: FittedWater): TimelineMark[] {
  const { fit, conditions, likely, others, movedIn } = water;
  const depths = (conditions.scene.card_samples ?? []).map(({ depth_m }) => depth_m);
  const between = { from_m: Math.min(...depths), to_m: Math.max(...depths) };
  const { estimates } = propagate((nuisance) => channelKd(site, nuisance, between), causesOf(site));
  if (fit.channel_kd === undefined) return [];
  const errors = fit.channel_kd;
  const kd = channelKd(conditions, likely, between);
  // Where the world is another one, light fades by so much more, and the fit tells so much of it: the rest it does not see.
  const unseenIn = (nuisance: Nuisance): number[] => {
    const there = channelKd(conditions, nuisance, between);
    const told = movedIn(nuisance, []).channel_kd;
    return CHANNELS.map((channel, k) => there[channel] - kd[channel] - itemAt(told, k));
  };
  const unseen = others.map(([minus, plus]) => [unseenIn(minus), unseenIn(plus)] as const);
  return CHANNELS.map((channel, k): TimelineMark => {
    const found = estimateFrom(kd[channel], [
      evenly(errors[channel].standard_error_per_m),
      ...unseen.map(([minus, plus]): Shift => [itemAt(minus, k), itemAt(plus, k)]),
    ]);
    const predicted = estimates[channel];
    const verdict = agrees(predicted, found) ? "agrees" : found.likely > predicted.likely ? "more" : "less";
    return {
      marks: `${channel}_attenuation`,
      predicted,
      measured: found,
      verdict,
      reason: whyOf(channel, verdict, predicted, found),
    };
  });
}

function whyOf(
  channel: (typeof CHANNELS)[number],
  verdict: "agrees" | "more" | "less",
  predicted: Estimate,
  measured: Estimate,
): Reason<MarkReasons> {
  if (verdict === "agrees") return reason("mark_water_agrees", "computed", { channel });
  const percent = 100 * Math.abs(measured.likely / predicted.likely - 1);
  return reason(verdict === "more" ? "mark_water_faster" : "mark_water_slower", "computed", {
    channel,
    percent,
  });
}
