/** What stands on a slate: lines of a plan by part, and which of them go first where there is no room for all. */
import type {
  DiveStep,
  MountedAdviceAnswer,
  MountStepCodes,
  MountTakeCodes,
  StepCodes,
  TakeCodes,
} from "@sunfathom/planner";
import type { SlatePart, SlateTexts, TextUnits } from "@sunfathom/words";

export const PARTS = ["before", "start", "down", "up", "after"] as const satisfies readonly SlatePart[];

const PART_OF: Readonly<Record<DiveStep["phase"], SlatePart>> = {
  before_dive: "before",
  at_start: "start",
  going_down: "down",
  lamps: "down",
  coming_up: "up",
  after_dive: "after",
};

/** What a slate takes of a plan, whether or not it knows what filters are mounted on. */
export type Planned = Pick<
  MountedAdviceAnswer,
  "steps" | "take" | "cautions" | "remember" | "filter_kind" | "filter_density" | "filter_id"
>;

export interface SlateLine {
  part: SlatePart;
  text: string;
  /** Lines of the lowest rank go first; Infinity for those that never go. */
  rank: number;
}

/**
 * Ranks of lines: what the plan on land says as well goes before what is looked up under water, and what is good to know before what is
 * to be done. To switch video lights off in time is a caution as much as a step, and never goes.
 */
const RANKS: Readonly<Record<keyof (StepCodes & MountStepCodes), number>> = {
  grade_red: 1,
  grade_no_red: 1,
  rinse: 2,
  lamps_hardly_show: 2,
  lamps_only: 2,
  mixing_zone: 3,
  lamps_reach: 3,
  lamps_would_help: 3,
  keep_lamp_filters: 3,
  bare_lamps: 3,
  filter_lamps: 4,
  set_frame: 4,
  set_modes: 4,
  keep_filter: 4,
  no_filter: 4,
  no_filter_for_lamps: 4,
  no_filter_fits: 4,
  fit_filter: 4,
  neutral_density: 4,
  mount_filter: 5,
  carry_filter: 5,
  come_close: 6,
  too_dark: 6,
  lamps_lead: 6,
  lamps_on: 6,
  lamps_with_daylight: 6,
  lamps_from: 6,
  lamps_off: 6,
  lamps_for_subject: 3,
  shallow_exposure: 7,
  deep_exposure: 7,
  neutral_on: 7,
  neutral_off: 7,
  balance_again: 8,
  filter_in: 8,
  filter_out: 8,
  start_exposure: 9,
  exposure_by_itself: 9,
  balance_on_card: 9,
  balance_on_card_in_lamp_light: 9,
  balance_by_itself: 9,
  balance_in_kelvin: 9,
  lamps_off_before_air: Number.POSITIVE_INFINITY,
};
const TAKEN = 0;

/** Steps whose text names the depths that they have. */
const TELLS_DEPTHS: ReadonlySet<keyof (StepCodes & MountStepCodes)> = new Set([
  "balance_again",
  "mixing_zone",
  "lamps_from",
  "deep_exposure",
  "shallow_exposure",
]);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The text for a code, which the compiler knows to take what the code comes with. */
const said = <Codes>(
  texts: { readonly [Code in keyof Codes]: (parameters: Codes[Code], units?: TextUnits) => string },
  { code, parameters }: { code: keyof Codes; parameters: unknown },
  units: TextUnits,
): string => texts[code](parameters as Codes[keyof Codes], units);

/** Lines of a plan, in the order in which they are done. */
export function slateLines({ steps, take }: Planned, texts: SlateTexts, units: TextUnits): SlateLine[] {
  const known: Partial<Record<SlatePart, number>> = {};
  const ofSteps = steps.map((step): SlateLine => {
    const part = PART_OF[step.phase];
    const text = said<StepCodes & MountStepCodes>(texts.steps, step, units);
    const isNew = step.depth_m !== undefined && !TELLS_DEPTHS.has(step.code) && known[part] !== step.depth_m;
    if (isNew && step.depth_m !== undefined) known[part] = step.depth_m;
    return {
      part,
      text:
        isNew && step.depth_m !== undefined
          ? texts.at({ depth_m: step.depth_m, text }, units)
          : capital(text),
      rank: RANKS[step.code],
    };
  });
  const items = take.map((item) => item.id ?? said<TakeCodes & MountTakeCodes>(texts.take, item, units));
  const taken =
    items.length === 0 ? [] : [{ part: "before" as const, text: texts.taken({ items }), rank: TAKEN }];
  return [...taken, ...ofSteps];
}

/** The same without the one that goes first: of the lowest rank, the last. */
export function withoutLeast(lines: readonly SlateLine[]): SlateLine[] | undefined {
  const least = Math.min(...lines.map(({ rank }) => rank));
  if (!Number.isFinite(least)) return undefined;
  const at = lines.map(({ rank }) => rank).lastIndexOf(least);
  return lines.filter((_, i) => i !== at);
}
