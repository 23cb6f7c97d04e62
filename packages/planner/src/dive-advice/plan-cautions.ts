/** The cautions of a plan: those that what it says calls for, and no others. */
import type { Advice } from "../cautions/advises.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import type { Caution } from "../result/common.js";
import type { DiveStep } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";

interface Said {
  steps: readonly DiveStep[];
  reasons: readonly { code: string }[];
  uncertainty: readonly { code: string }[];
}

/** Steps that change what is on the lens under water. */
const CHANGES: readonly DiveStep["code"][] = ["filter_in", "filter_out", "neutral_off", "neutral_on"];
/** Steps that set a white balance under water. */
const BALANCES: readonly DiveStep["code"][] = [
  "balance_on_card",
  "balance_on_card_in_lamp_light",
  "balance_in_kelvin",
  "balance_again",
  "filter_in",
  "filter_out",
];

/** Ways to pay, or out, that a step names. */
function waysIn({ code, parameters }: DiveStep): { way: string }[] {
  if (code === "too_dark") return parameters.ways.map((way) => ({ way: way.code }));
  return code === "lamps_off" && parameters.other ? [{ way: parameters.other.way.code }] : [];
}

/** Whoever films from no farther than this comes close to what lives there. A judgement. */
const CLOSE_M = 0.5;

/** A filter that stays on for the whole dive is one for dry land, whatever it is mounted on. */
export function planCautions(
  { scene, filter, lampPlan }: Decisions,
  { steps, reasons, uncertainty }: Said,
): Caution[] {
  const has = (codes: readonly DiveStep["code"][]) => steps.some(({ code }) => codes.includes(code));
  const filter_change_underwater = has(CHANGES) ? scene.filter_change_underwater : "none";
  const advises: Advice[] = ["way_up"];
  if (scene.subject_distance_m < CLOSE_M) advises.push("closer");
  if (has(BALANCES) || lampPlan !== "none") advises.push("balance");
  if (filter.filter_kind !== "none")
    advises.push(filter_change_underwater === "none" ? "filter_on_land" : "filter_under_water");
  return cautionsFor(
    { ...scene, filter_change_underwater },
    { reasons: [...steps, ...reasons], uncertainty, ways: steps.flatMap(waysIn), advises },
  );
}
