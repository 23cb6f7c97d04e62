import { type KitSize, kitAdviceReady } from "@sunfathom/answers";
import { kitAdviceExamples, largestExactKit, mostKitDives, mostKitPieces } from "@sunfathom/contract";
import { costOfCalculation } from "../../compute/cost.js";
import { tripOperation } from "./trip-operation.js";

/** The smallest kit that serves several dives. */
export const kitAdvice = tripOperation({
  name: "kit-advice",
  operationId: "computeKitAdvice",
  summary: "The smallest kit that serves several dives",
  description: `For up to ${mostKitDives} dives and ${mostKitPieces} pieces: the smallest set of filters, rings, holders and video lights with which no dive loses what an eye sees against all pieces at hand; what each piece buys, on which dives; what is never used; and which further filter would help most, by kind and density. Sets of up to ${largestExactKit} pieces are all tried (\`method\` \`exact\`); where none of them is enough, the set is put together piece by piece, and the answer says so (\`greedy\`). Sets of one size are compared by what all dives lose together, then by the light that their filters take, then by \`id\`. A filter counts where it fits: a ring is taken for what it lets fit. Each dive is judged as \`filter-choice\` and the plan for a dive judge it.`,
  request: "KitAdviceRequest",
  answer: "KitAdviceAnswer",
  examples: kitAdviceExamples,
  forms: ["application/json"],
  prepare: kitAdviceReady,
  cost: ({ size }) => costOfKit(size),
});

/** A filter at one depth, by daylight and beside a light; a light at one depth, and in itself. */
const merit = 0.2;
const litMerit = 0.15;
const litStage = 0.5;
const light = 8;
/** The whole picture with a filter on the light. */
const frame = 0.4;
/** The planner's grid of filters, and no filter. */
const grid = 21;
/** States of the world, two for each thing that is not known: of a dive, and of a piece. */
const spread_dive = 20;
const spread_piece = 15;
/** One way to hold a filter. */
const way = 0.5;
const depthsOfRange = 7;
/** Chains of up to three rings, where most lead on to each other. */
const chains = (rings: number): number => 1 + rings + (rings / 2) ** 2 + (rings / 3) ** 3;

/** By dives and pieces: every filter in every light on every dive, and every way to hold it. */
function costOfKit({ scenes, filters, sizes, lampFilters, lights, rings }: KitSize): number {
  const pieces = filters + lampFilters + lights + rings;
  const dives = scenes.map(({ kit: _, ...scene }: Sized) => {
    const depths = scene.min_depth_m === scene.max_depth_m ? 1 : depthsOfRange;
    const lit = light + depths * (litStage + filters * litMerit) + frame * (1 + filters) * lampFilters;
    const mounted = scene.port_kind === undefined ? 0 : (1 + lights) * sizes * way * chains(rings);
    const byDay = depths * (grid + filters) * merit;
    return costOfCalculation("attenuation", scene) + byDay + lights * lit + mounted + spread_dive;
  });
  return Math.ceil(dives.reduce((sum, dive) => sum + dive, 0) + pieces * spread_piece);
}

interface Sized {
  min_depth_m?: number;
  max_depth_m?: number;
  port_kind?: string;
  kit?: unknown;
}
