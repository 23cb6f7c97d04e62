import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { FilterChange } from "../scene/lens-filter.js";
import { FilterHolder } from "../scene/mounting/filter.js";
import { Clarity } from "./clarity.js";
import { answerHead, answerTail, code, Figure, parameters, ReasonBasis, Statement } from "./common.js";
import { FilterVerdict } from "./filter-choice.js";
import { MountOption, MountPlace, MountVerdict } from "./filter-mounting.js";
import { BalanceTo, MixedLightVerdict } from "./mixed-light.js";
import { balanceDepths, density, depth, iso } from "./quantities.js";

export const DivePhase = z
  .enum(["before_dive", "at_start", "going_down", "lamps", "coming_up", "after_dive"])
  .describe("When to do a step of the plan.");

export const LampPlan = z
  .enum([
    "none",
    "lamps_off",
    "lamps_with_filter",
    "lamps_with_daylight",
    "lamps_lead",
    "lamps_only",
    "daylight_leads",
  ])
  .describe(
    "What to do with the video lights: there are none, leave them off, put filters on them, balance to them and daylight together, or let one of the lights lead.",
  );

const exampleStep = {
  phase: "before_dive",
  code: "mount_filter",
  text: "Mount a red filter of density 1.1 while the housing is dry and open, and check that it is clean.",
  why: "It brings the mean colour error from 4.9 down to 2.7 and costs 3 stops of light.",
  basis: "computed",
  figures: [
    { name: "with_e", value: 2.7 },
    { name: "without_e", value: 4.9 },
    { name: "loss_stops", value: 3.1 },
  ],
  parameters: { filter: { kind: "red", density: 1.1 }, with_e: 2.7, without_e: 4.9, loss_stops: 3.1 },
} as const;

const exampleTake = {
  id: "shelf-red-2",
  code: "lens_filter",
  what: "shelf-red-2 (a red filter of density 0.5)",
  why: "The plan has it on the lens.",
  parameters: { filter: { kind: "red", density: 0.5, id: "shelf-red-2" } },
} as const;

export const DiveStep = z
  .object({
    phase: choice(DivePhase, { description: "When to do it.", example: exampleStep.phase }),
    depth_m: depth("Where to do it; absent where it belongs to no single depth.", 8.2).optional(),
    code: code(exampleStep.code),
    text: text({ description: "What to do, ready to read out.", example: exampleStep.text }),
    why: text({ description: "Why, in a sentence.", example: exampleStep.why }),
    basis: choice(ReasonBasis, { description: "Where the step comes from.", example: exampleStep.basis }),
    figures: list(Figure, {
      description: "The figures in it: the numbers among its parameters.",
      example: [...exampleStep.figures],
    }),
    parameters: parameters({ example: exampleStep.parameters }),
  })
  .describe("One line of the plan.");

export const Remember = z
  .object({
    filter_density: density(
      "Of the colour filter; absent without one, and for a measured one.",
      1.1,
    ).optional(),
    first_balance_depth_m: depth("Where to set the first white balance.", 5),
    starting_iso: iso("ISO speed to begin with, exactly: on a dial, the nearest third of a stop."),
  })
  .describe("The numbers to remember first.");

const exampleClose = {
  code: "close_filter",
  text: "A close call: no filter would do about as well.",
  parameters: { filter: { kind: "none" }, probability: 0.41 },
} as const;

export const CloseCall = z
  .object({
    code: code(exampleClose.code),
    text: text({ description: "What the other plan is.", example: exampleClose.text }),
    parameters: parameters({ example: exampleClose.parameters }),
  })
  .describe("Another plan that is nearly as good, with the probability that it is the better one.");

export const TakeItem = z
  .object({
    id: text({
      description: "Your id of it in `kit`; absent for what the kit lacks.",
      example: exampleTake.id,
    }).optional(),
    code: code(exampleTake.code),
    what: text({ description: "What to take.", example: exampleTake.what }),
    why: text({ description: "What it is for.", example: exampleTake.why }),
    parameters: parameters({ example: exampleTake.parameters }),
  })
  .describe("Something to take from the shelf.");

const exampleMount = {
  holder: "screw_on_lens",
  place: "on_lens",
  verdict: "fits",
  filter_change_underwater: "none",
  filters: 1,
} as const;

export const MountInPlan = z
  .object({
    holder: choice(FilterHolder, {
      description:
        "What holds what the plan puts on the lens: the holder that you asked for, unless it does not fit.",
      example: exampleMount.holder,
    }),
    place: choice(MountPlace, { description: "Where it puts the filter.", example: exampleMount.place }),
    verdict: choice(MountVerdict, {
      description:
        "Whether it fits; `does_not_fit` only where no holder does, and then the plan mounts nothing.",
      example: exampleMount.verdict,
    }),
    filter_change_underwater: choice(FilterChange, {
      description: "Whether, and how, it lets the filter be changed under water.",
      example: exampleMount.filter_change_underwater,
    }),
    filters: quantity({
      description: "How many filters it holds, one behind the other: one for colour, and an ND.",
      unit: "1",
      decimals: 0,
      min: 0,
      max: 2,
      example: exampleMount.filters,
    }),
    options: list(MountOption, {
      description: "Every holder, best first, as `filter-mounting` tells them.",
      example: [
        {
          holder: "screw_on_lens",
          place: "on_lens",
          verdict: "fits",
          code: "mount_on_lens",
          text: "The filter screws onto the lens inside the housing: in air, safe from knocks, but fixed for the whole dive.",
          parameters: {},
        },
      ],
    }),
  })
  .describe("What holds what the plan puts on the lens.");

export const DiveAdviceAnswer = z
  .object({
    ...answerHead,
    summary: text({
      description: "The whole advice in a few sentences.",
      example:
        "Mount a red filter of density 1.1. Expose with ISO 200 at f/4.5. White-balance on a card at the start.",
    }),
    summary_parts: list(Statement, {
      description: "The same, each sentence as its code and what its text is made of.",
      example: [
        { code: "mount", parameters: { filter: { kind: "red", density: 1.1 } } },
        { code: "balance", parameters: { again: 0 } },
      ],
    }),
    filter_kind: choice(FilterVerdict, { description: "What to mount on the lens.", example: "red" }),
    filter_density: density("Its density; absent for `none` and for a measured filter.", 1.1).optional(),
    filter_id: text({
      description: "Your id of the filter, where it comes from `kit`.",
      example: "shelf-red-2",
    }).optional(),
    filter_verdict: choice(Clarity, { description: "How clear that choice is.", example: "clear" }),
    lamp_plan: choice(LampPlan, { description: "What to do with the video lights.", example: "none" }),
    mixed_light_verdict: choice(MixedLightVerdict, {
      description: "Which light leads in the middle of the range.",
      example: "daylight_only",
    }),
    balance_to: choice(BalanceTo, { description: "What to set the white balance to.", example: "daylight" }),
    balance_depths_descending_m: balanceDepths("down", [5, 8, 12]),
    balance_depths_ascending_m: balanceDepths("up", [12, 8]),
    remember: Remember.describe("The numbers to remember first."),
    close_calls: list(CloseCall, {
      description:
        "Plans that are nearly as good: a small change of the scene may make one of them the answer. Usually empty.",
      example: [{ ...exampleClose, parameters: { ...exampleClose.parameters } }],
    }),
    steps: list(DiveStep, {
      description: "The plan, in the order in which you do things.",
      example: [{ ...exampleStep, figures: [...exampleStep.figures] }],
    }),
    mounting: MountInPlan.describe(
      "What holds what the plan puts on the lens; present where the scene says what a filter is mounted on, and one is called for.",
    ).optional(),
    take: list(TakeItem, {
      description: "What to take: all that the plan uses, with your ids where `kit` has it.",
      example: [exampleTake],
    }),
    ...answerTail,
  })
  .describe("The whole job for one dive on one page, on light and colour only. It does not plan the dive.");
export type DiveAdviceAnswer = z.infer<typeof DiveAdviceAnswer>;
