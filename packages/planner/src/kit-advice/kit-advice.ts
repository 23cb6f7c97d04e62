import { cautionsFor, cautionsIn } from "../cautions/cautions-for.js";
import { reasonsOf } from "../codes/coded.js";
import type { KitAdviceReasons } from "../codes/kit-advice.js";
import { named } from "../filter-choice/candidates.js";
import { lightSources } from "../light/sources.js";
import { itemAt, mapBoth } from "../lists/non-empty.js";
import type { KitAdviceResult, KitOnDive } from "../result/kit-advice.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { DiveProblem } from "./dive-problem.js";
import { oneMoreFilter } from "./one-more.js";
import { type DiveOptions, type Option, optionsFor } from "./options.js";
import { NO_PIECE, placesIn, sizeOf, wholeSet } from "./piece-set.js";
import { adviceOnPieces, type Found } from "./pieces.js";
import type { KitPlan } from "./plan.js";
import { bestWith, type FoundSet, KitSearch, LARGEST_EXACT } from "./search.js";
import { CLOSE_FROM, probabilityOver, type Spread, spreadOf } from "./spread.js";

const reason = reasonsOf<KitAdviceReasons>();

const SOURCES = [
  "filter_shapes",
  "filter_merit",
  "chart_24",
  "ciede2000",
  "camera_recording",
  "port_radiance",
];
const MOUNTING_SOURCES = ["ports", "vignetting", "gap_and_weight", "ring_chain", "mounting_practice"];

/**
 * All that can be done on each dive.
 * @throws DiveProblem for a dive that the model has no answer for, or without any light
 */
function optionsOfDives({ dives, pieces }: KitPlan): DiveOptions[] {
  return dives.map((dive, nth) => {
    try {
      const options = optionsFor(dive, pieces);
      if (options.options.length > 0) return options;
      throw new SceneProblem({ code: "no_light", parameters: { case: "no_source" } }, "lamps");
    } catch (error) {
      throw error instanceof SceneProblem ? new DiveProblem(nth, error) : error;
    }
  });
}

/** With a set that serves every dive, each has a way. */
function waysWith(dives: readonly DiveOptions[], set: number): Option[] {
  return dives.map(({ options, dive: { id } }) => {
    const found = bestWith(options, set);
    if (found === undefined) throw new RangeError(`no way to film ${id}`);
    return found;
  });
}

/** The set that was found, before it is told. @throws DiveProblem */
export function findKit(plan: KitPlan): Found & FoundSet {
  const dives = optionsOfDives(plan);
  const pieces = plan.pieces.length;
  const ways = dives.map(({ options }) => options);
  const found = new KitSearch(ways, pieces, plan.regret_limit_delta_e00).find();
  return { ...found, plan, dives, used: waysWith(dives, found.set), best: waysWith(dives, wholeSet(pieces)) };
}

/**
 * The smallest kit with which no dive loses what an eye sees against all pieces together, what each piece buys, and what would help
 * beyond them.
 * @throws DiveProblem for a dive that the model has no answer for
 */
export function kitAdvice(plan: KitPlan): KitAdviceResult {
  const found = findKit(plan);
  const { dives, used, best, set, method } = found;
  const spreads = mapBoth(used, best, spreadOf);
  const onDives = dives.map((dive, d) => tellDive(found, dive, d, itemAt(spreads, d)));
  const pieces = adviceOnPieces(found);
  const limit = plan.regret_limit_delta_e00;
  const more = oneMoreFilter(
    dives,
    best.map(({ delta_e00 }) => delta_e00),
    limit,
  );
  const { uncertainty } = itemAt(spreads, worstOf(onDives));
  return {
    method,
    regret_limit_delta_e00: limit,
    take: placesIn(set).map((place) => itemAt(plan.pieces, place).id),
    total_regret_delta_e00: onDives.reduce((sum, { regret_delta_e00 }) => sum + regret_delta_e00.likely, 0),
    dives: onDives,
    pieces,
    ...(more ? { one_more: more.more } : {}),
    reasons: [
      ...setReasons(found),
      reason(plan.limit_is_own ? "kit_limit_given" : "kit_limit_judged", "judgement", {
        limit_delta_e00: limit,
      }),
      ...lossReasons(onDives),
      ...closeReasons(onDives, pieces),
      ...lightReasons(plan),
      more
        ? reason("kit_one_more", "computed", {
            filter: named(more.candidate),
            dives: more.more.dives.length,
            delta_e00: Math.max(...more.more.dives.map(({ gains_delta_e00 }) => gains_delta_e00)),
          })
        : reason("kit_no_more_helps", "computed", { limit_delta_e00: limit }),
    ],
    cautions: cautionsOn(found),
    uncertainty,
    sources: sourcesOf(found),
  };
}

/** The dive that loses most; the first of equals. */
const worstOf = (dives: readonly KitOnDive[]): number =>
  dives.reduce(
    (worst, { regret_delta_e00 }, d) =>
      regret_delta_e00.likely > itemAt(dives, worst).regret_delta_e00.likely ? d : worst,
    0,
  );

function tellDive(
  { plan, used, best }: Found,
  { dive, options }: DiveOptions,
  d: number,
  spread: Spread,
): KitOnDive {
  const { filter, lighting, delta_e00, loss_stops } = itemAt(used, d);
  const all = itemAt(best, d);
  const idOf = (place: number) => itemAt(plan.pieces, place).id;
  const without = bestWith(options, NO_PIECE);
  const { light, lampFilter, use } = lighting;
  const { requires = NO_PIECE, holder, verdict, changeable = false } = filter?.way ?? {};
  const probability_over_limit = probabilityOver(
    delta_e00 - all.delta_e00,
    spread.sigma_delta_e00,
    plan.regret_limit_delta_e00,
  );
  return {
    id: dive.id,
    ...(filter ? { filter_id: idOf(filter.place) } : {}),
    ...(light === undefined ? {} : { light_id: idOf(light) }),
    ...(lampFilter === undefined ? {} : { lamp_filter_id: idOf(lampFilter) }),
    held_by: placesIn(requires).map(idOf),
    ...(holder === undefined ? {} : { holder }),
    ...(verdict === undefined ? {} : { mount_verdict: verdict }),
    change_at_depth: changeable,
    light_use: use,
    colour_error_delta_e00: spread.error,
    ...(without ? { colour_error_without_delta_e00: without.delta_e00 } : {}),
    colour_error_whole_kit_delta_e00: all.delta_e00,
    regret_delta_e00: spread.regret,
    filter_loss_stops: loss_stops,
    probability_over_limit,
    verdict: probability_over_limit >= CLOSE_FROM ? "near_tie" : "clear",
  };
}

function setReasons({ plan, set, method }: Found & FoundSet): KitAdviceResult["reasons"] {
  const of_pieces = plan.pieces.length;
  const [pieces, dives] = [sizeOf(set), plan.dives.length];
  if (pieces === 0) return [reason("kit_nothing_needed", "computed", { of_pieces, dives })];
  return [
    method === "exact"
      ? reason("kit_smallest", "computed", { pieces, of_pieces, dives })
      : reason("kit_greedy", "computed", { pieces, of_pieces, most_tried: LARGEST_EXACT }),
  ];
}

/** Losses are told to a hundredth. */
const NOTHING_DELTA_E00 = 0.005;

function lossReasons(dives: readonly KitOnDive[]): KitAdviceResult["reasons"] {
  const { id, regret_delta_e00 } = itemAt(dives, worstOf(dives));
  const delta_e00 = regret_delta_e00.likely;
  return [
    delta_e00 < NOTHING_DELTA_E00
      ? reason("kit_loses_nothing", "computed", { dives: dives.length })
      : reason("kit_loses_most", "computed", { dive: id, delta_e00 }),
  ];
}

const idsOf = (those: readonly { id: string; verdict: string }[]): string[] =>
  those.filter(({ verdict }) => verdict === "near_tie").map(({ id }) => id);

function closeReasons(
  dives: readonly KitOnDive[],
  pieces: KitAdviceResult["pieces"],
): KitAdviceResult["reasons"] {
  const [over, needless] = [idsOf(dives), idsOf(pieces)];
  return [
    ...(over.length > 0 ? [reason("kit_dives_close", "computed", { dives: over })] : []),
    ...(needless.length > 0 ? [reason("kit_pieces_close", "computed", { pieces: needless })] : []),
  ];
}

function lightReasons({ pieces }: KitPlan): KitAdviceResult["reasons"] {
  const lights = pieces.filter(({ item }) => item === "lamp").length;
  return lights > 1 ? [reason("kit_one_light_at_a_time", "judgement", { lights })] : [];
}

/** What any of the dives calls for, filmed as it is advised. */
function cautionsOn({ dives, used }: Found): KitAdviceResult["cautions"] {
  const codes = dives.flatMap(({ dive: { scene } }, d) => {
    const { filter, lighting } = itemAt(used, d);
    const lamps = lighting.light === undefined ? [] : lighting.conditions.scene.lamps;
    const onLens = filter?.way.changeable ? ("filter_under_water" as const) : ("filter_on_land" as const);
    const advises = filter === undefined ? [] : [onLens];
    return cautionsFor({ ...scene, lamps }, { advises }).map(({ code }) => code);
  });
  const isHeld = used.some(({ filter }) => filter?.way.holder !== undefined);
  return [...cautionsIn(codes), ...(isHeld ? [{ code: "mount_makers_instructions" } as const] : [])];
}

const sourcesOf = ({ dives }: Found): string[] => [
  ...new Set([
    ...dives.flatMap(({ lightings }) => lightings.flatMap(({ conditions }) => lightSources(conditions))),
    ...SOURCES,
    ...(dives.some(({ dive }) => dive.scene.port_kind !== undefined) ? MOUNTING_SOURCES : []),
  ]),
];
