import { codedOf } from "../../codes/coded.js";
import type { WaysOut } from "../../codes/ways-out.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../../mixed-light/lights.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { step } from "./step.js";

const at = { phase: "before_dive" } as const;

/** Ways that ask for a lens without a colour filter. */
const BARE_LENS_WAYS = ["balance_to_lamps", "come_closer"];

/** Off, and what else could be done: told on land, since what it asks for is mounted, or left, there. */
export function lampsOff({ middle, fitted, filter, onSubject, closeCalls }: Decisions): DiveStep[] {
  const isBare = filter.filter_kind === "none";
  const { ways_out } = middle;
  const off = ways_out.find(({ way }) => way === "lamps_off");
  // A close call says already how they would be on.
  const isClose = closeCalls.some(({ code }) => code === "close_lamps");
  const other = ways_out.find(
    ({ way, split_left_delta_e00 }) =>
      !isClose &&
      way !== "lamps_off" &&
      split_left_delta_e00 <= VISIBLE_SPLIT_DELTA_E00 &&
      (isBare || !BARE_LENS_WAYS.includes(way)),
  );
  return [
    // Where lights fight is where a split is seen, which is a judgement.
    step({ ...at, basis: "judgement" }, "lamps_off", {
      split: middle.split_delta_e00?.likely ?? 0,
      red_excess: middle.red_excess_stops?.likely ?? 0,
      cost: off?.cost_stops ?? 0,
      ...(fitted ? { fitted: fitted.filter } : {}),
      ...(other ? { other: { way: codedOf<WaysOut>(other), left: other.split_left_delta_e00 } } : {}),
    }),
    ...(onSubject ? [step(at, "lamps_for_subject", onSubject)] : []),
  ];
}
