import { CHART_PATCHES, integrateProduct, labOf, Y_BAR } from "@sunfathom/optics";
import { WHITE_D65 } from "../camera/d65.js";
import { type Candidate, candidateFilter } from "../filter-choice/candidates.js";
import { chartSeen, errorOf } from "../filter-choice/merit.js";
import { sightOf } from "../filter-choice/merits.js";
import type { Conditions } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

/** Of what is solid in the picture the lamps reach the subject, and as much again around it is not theirs: a judgement. */
const LIT_SHARE = 1 / 2;

/** Colour errors of what is in the picture, mean CIEDE2000. */
export interface FrameErrors {
  /** Of what the lamps light, or of all where there are none. */
  lit: number;
  /** Of what they do not reach; absent without lamps. */
  around?: number;
}

/**
 * Colour errors of the picture at one depth: the subject is lit by lamps and daylight, and what surrounds it by daylight alone, seen
 * with the balance and the exposure that the subject has. As much darker as daylight is, it is meant to look so.
 */
export function frameErrorsAt(
  conditions: Conditions,
  nuisance: Nuisance,
  depth_m: number,
  candidate: Candidate,
): FrameErrors {
  const { camera, finish, stages } = sightOf(conditions, nuisance, [depth_m]);
  const [stage] = stages;
  const filter = candidateFilter(candidate, nuisance);
  const { seen, shot, finished } = chartSeen(stage, filter, camera, { finish });
  const lit = errorOf(seen, finished);
  if (conditions.scene.lamps.length === 0) return { lit };

  const byDay = { ...conditions, scene: { ...conditions.scene, lamps: [] } };
  const { subject } = stageAt(underwater(byDay, nuisance), depth_m);
  const darker = integrateProduct(subject, Y_BAR) / integrateProduct(stage.subject, Y_BAR);
  const around = chartSeen(
    { ...stage, subject },
    filter,
    { ...camera, balance: { gains: shot.balance.gains } },
    { finish, given: shot.recorder },
  );
  const wanted = around.seen.map((target, place) => {
    if (place >= CHART_PATCHES.length) return target;
    const [X, Y, Z] = target.wantedXyz;
    return { ...target, wantedLab: labOf([X * darker, Y * darker, Z * darker], WHITE_D65) };
  });
  return { lit, around: errorOf(wanted, finished) };
}

/** Colour error of the whole picture. Without lamps it is what a filter is judged by. */
export function frameErrorAt(...of: Parameters<typeof frameErrorsAt>): number {
  const { lit, around = lit } = frameErrorsAt(...of);
  return LIT_SHARE * lit + (1 - LIT_SHARE) * around;
}
