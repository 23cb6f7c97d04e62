import { type Coded, codedOf } from "../../codes/coded.js";
import type { FilterMountingReasons } from "../../codes/filter-mounting.js";
import type { MountTakeCodes } from "../../codes/mount-in-plan.js";
import type { MountingStepCode } from "../../codes/mounting-steps.js";
import type { DiveAdviceAnswer, DiveStep } from "../../result/dive-advice.js";
import type { FilterMountingAnswer } from "../../result/filter-mounting.js";
import type { MountedAdviceAnswer, MountedStep } from "../../result/mounted-advice.js";

type MountReason = Coded<FilterMountingReasons>;

/** What `filter-mounting` says of what a plan puts on the lens. */
export interface OnMount {
  mount: FilterMountingAnswer;
  /** That the plan puts on the lens. */
  filters: number;
  /** Neutral density had to stay ashore, since behind another filter it does not fit. */
  noRoomForTwo: boolean;
  /** No holder takes a filter. */
  refused: boolean;
}

/** Done beside the plan: care over the years, and what the plan says elsewhere. */
const NOT_ON_THIS_DIVE: readonly MountingStepCode[] = [
  "cut_practice",
  "sheet_set",
  "sheet_renew",
  "dry_land_only",
  "rinse",
];

type MountCodes = readonly (keyof FilterMountingReasons)[];
/** How it is held. */
const HOW: MountCodes = [
  "mount_on_lens",
  "mount_outside_fixed",
  "mount_outside_changed",
  "mount_over_window",
  "mount_behind_lens",
  "rings_close",
  "sheet_measure_opening",
  "sheet_cut",
];
/** Told among the reasons: what is assumed and what it weighs changes nothing that is done. */
const BESIDE: MountCodes = [
  "pupil_distance_assumed",
  "format_assumed",
  "filter_weighs",
  "sheet_shifts_focus",
  "sheet_all_in_reach",
  "sheet_infinity_hidden",
];
/** Told by what is done, or of the port and not of the filter. */
const NOT_OF_THE_FILTER: MountCodes = [
  "corners_test",
  "flat_port_narrows",
  "dome_keeps_field",
  "dome_brings_near",
  "rings_filter_thread_assumed",
  "rings_not_needed",
];

const isAsked = ({ code }: { code: string }): boolean => code === "mount_asked_does_not_fit";

const reasonsIn = ({ reasons }: FilterMountingAnswer, isOf: (code: keyof FilterMountingReasons) => boolean) =>
  reasons
    .filter(({ code }) => isOf(code))
    .map((reason): MountReason => codedOf<FilterMountingReasons>(reason));

/** Why it is held like this: what a diver acts on. */
const whyOf = (mount: FilterMountingAnswer): MountReason[] =>
  reasonsIn(mount, (code) => ![...HOW, ...BESIDE, ...NOT_OF_THE_FILTER].includes(code));

const NO_ROOM: MountReason = { code: "mount_no_room_for_two", parameters: {} };

function fitStep({ mount, filters, noRoomForTwo }: OnMount): MountedStep {
  const { holder, place, verdict, procedure } = mount;
  return {
    phase: "before_dive",
    code: "fit_filter",
    parameters: {
      holder,
      place,
      verdict,
      filters,
      how: reasonsIn(mount, (code) => HOW.includes(code)),
      do: procedure.filter(({ code }) => !NOT_ON_THIS_DIVE.includes(code)),
      why: [...whyOf(mount), ...(noRoomForTwo ? [NO_ROOM] : [])],
    },
    basis: "common_practice",
  };
}

const IN_WATER: readonly string[] = ["before_port", "before_window"];

/** What goes before the housing needs no open one, and is rinsed with it. */
const onMount =
  ({ place }: FilterMountingAnswer) =>
  (step: DiveStep): MountedStep => {
    if (!IN_WATER.includes(place)) return step;
    if (step.code === "mount_filter") return { ...step, parameters: { ...step.parameters, outside: true } };
    if (step.code !== "rinse" || step.parameters.gear.includes("filter")) return step;
    const [housing, ...others] = step.parameters.gear;
    return {
      ...step,
      parameters: { gear: housing ? [housing, "filter", ...others] : ["filter", ...others] },
    };
  };

/** The step that leaves the lens bare says that it is for want of a holder. */
const refusedStep =
  (mount: FilterMountingAnswer) =>
  (step: DiveStep): MountedStep =>
    step.code === "no_filter"
      ? { ...step, code: "no_filter_fits", parameters: { ...step.parameters, why: whyOf(mount) } }
      : step;

const ON_LENS: readonly string[] = ["mount_filter", "keep_filter", "carry_filter", "neutral_density"];

function stepsWith(steps: readonly DiveStep[], on: OnMount): MountedStep[] {
  if (on.refused) return steps.map(refusedStep(on.mount));
  if (on.filters === 0) return [...steps];
  const mounted = steps.map(onMount(on.mount));
  const last = Math.max(...steps.map(({ code }, i) => (ON_LENS.includes(code) ? i : 0)));
  return [...mounted.slice(0, last + 1), fitStep(on), ...mounted.slice(last + 1)];
}

/** Holders that are pieces of their own. */
const PIECES: readonly string[] = ["flip", "action_camera"];

function takeWith({ mount, filters }: OnMount): Coded<MountTakeCodes>[] {
  if (filters === 0) return [];
  const { holder, ring_chain: chain } = mount;
  const { buy_from_mm: from_mm, buy_to_mm: to_mm } = chain ?? {};
  return [
    ...(PIECES.includes(holder) ? [{ code: "holder", parameters: { holder } } as const] : []),
    ...(chain && chain.rings.length > 0
      ? [{ code: "rings", parameters: { rings: chain.rings.map(({ id }) => id) } } as const]
      : []),
    ...(from_mm === undefined || to_mm === undefined
      ? []
      : [{ code: "ring_lacking", parameters: { from_mm, to_mm } } as const]),
  ];
}

/** A plan with what holds its filters, or why nothing does. */
export function withMount(plan: DiveAdviceAnswer, on: OnMount): MountedAdviceAnswer {
  const { mount, filters, refused } = on;
  const { holder, place, verdict, filter_change_underwater, options } = mount;
  const asked = mount.reasons.filter(isAsked);
  const given = plan.cautions.map(({ code }) => code as string);
  return {
    ...plan,
    summary: [
      ...plan.summary,
      ...(refused ? [{ code: "mount_nothing_fits", parameters: {} } as const] : []),
      ...asked.map((reason) =>
        codedOf<Pick<FilterMountingReasons, "mount_asked_does_not_fit">>(reason as never),
      ),
    ],
    mounting: { holder, place, verdict, filter_change_underwater, filters, options },
    steps: stepsWith(plan.steps, on),
    take: [...takeWith(on), ...plan.take].sort(
      (a, b) => Number(b.code === "lens_filter") - Number(a.code === "lens_filter"),
    ),
    reasons: [
      ...plan.reasons.filter(({ code }) => !refused || code !== "no_filter_owned"),
      ...mount.reasons.filter(({ code }) =>
        refused ? whyOf(mount).some((why) => why.code === code) : filters > 0 && BESIDE.includes(code),
      ),
    ],
    cautions: [
      ...plan.cautions,
      ...(filters > 0 ? mount.cautions.filter(({ code }) => !given.includes(code)) : []),
    ],
    sources: [...new Set([...plan.sources, ...mount.sources])],
  };
}
