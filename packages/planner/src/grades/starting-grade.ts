/**
 * A grade to start from: what `matched` or `basic_edit` does to footage of one depth, through the filter that is on the lens, as numbers
 * that another program can apply.
 */
import { type CameraState, cameraState } from "../camera/camera-state.js";
import type { Matrix3, Vector3 } from "../camera/matrix.js";
import { perPlace } from "../camera/matrix.js";
import { pictureMatrix, pictureOfXyz } from "../camera/picture.js";
import type { Transfer } from "../camera/transfer.js";
import { checkpoint } from "../checkpoint.js";
import type { RedQuality } from "../codes/colour-recovery.js";
import type { NamedFilter } from "../codes/named-filter.js";
import { qualityOf, recordGrey } from "../colour-recovery/record-grey.js";
import { mountedIn, NO_FILTER, named } from "../filter-choice/candidates.js";
import { type BasicEdit, fitBasicEdit } from "../filter-choice/finish/basic-edit.js";
import { matchedGrade } from "../filter-choice/finish/matched.js";
import { type ChartSeen, chartRecorded, chartSeen, expectedError, greysIn } from "../filter-choice/merit.js";
import { conditionsOf } from "../light/conditions.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { requireLight } from "../light/require-light.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

interface GradeFacts {
  depth_m: number;
  filter: NamedFilter;
  curve: Transfer;
  bits: number;
  /** Mean CIEDE2000 of chart and background, noise included, without the grade and with it. */
  without_delta_e00: number;
  delta_e00: number;
  /** Depths between which the same grade, on footage with the same settings, is off by no more than so much above that. */
  holds_min_depth_m: number;
  holds_max_depth_m: number;
  red: RedQuality;
}

/** From linear recorded channels, 1 at the top, to linear red, green and blue of ITU-R BT.709. */
interface MatchedStart extends GradeFacts {
  finish: "matched";
  matrix: Matrix3;
  offset: Vector3;
}

/** From the camera's picture, linear red, green and blue of ITU-R BT.709, to the same. */
export interface EditStart extends GradeFacts {
  finish: "basic_edit";
  edit: BasicEdit;
}

export type StartingGrade = MatchedStart | EditStart;

/** A grade holds as long as it is off by less than this beyond its own depth: a difference that is seen, not a disturbing one. */
const HOLDS_WITHIN_DELTA_E00 = 2;
const STEP_M = 0.5;
const FARTHEST_M = 20;
const SHALLOWEST_M = 0.1;

function errorOf({ seen, finished }: Pick<ChartSeen, "seen" | "finished">): number {
  const total = seen.reduce((sum, target) => sum + target.weight * expectedError(target, finished), 0);
  return total / seen.reduce((sum, { weight }) => sum + weight, 0);
}

/**
 * The grade for the middle of the filmed depths. `finish` `matched` gives the one that is fitted to a chart; any other the sliders.
 * @throws SceneProblem without any light, or for a sun below the model's domain
 */
export function startingGrade(scene: Scene): StartingGrade {
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const depth_m = (scene.min_depth_m + scene.max_depth_m) / 2;
  const finish = scene.finish === "matched" ? "matched" : "basic_edit";
  const world = underwater(conditions, NOMINAL);
  const filter = lensFilterOf(scene, NOMINAL);
  const camera = cameraState(scene, NOMINAL, finish);
  const stage = stageAt(world, depth_m);
  const own = chartSeen(stage, filter, camera, { finish });
  const delta_e00 = errorOf(own);

  // The camera keeps the settings and the balance of that depth.
  const { settings, neutral_stops, gains } = own.shot.recorder;
  const kept: CameraState = { ...camera, balance: { gains } };
  const holdsAt = (other_m: number): boolean => {
    checkpoint();
    const { seen } = chartRecorded(stageAt(world, other_m), filter, kept, {
      finish,
      given: { settings, neutral_stops },
    });
    return errorOf({ seen, finished: own.finished }) <= delta_e00 + HOLDS_WITHIN_DELTA_E00;
  };
  const holdsTo = (direction: 1 | -1): number => {
    let held_m = depth_m;
    for (let away_m = STEP_M; away_m <= FARTHEST_M; away_m += STEP_M) {
      const next_m = depth_m + direction * away_m;
      if (next_m < SHALLOWEST_M || !holdsAt(next_m)) break;
      held_m = next_m;
    }
    return held_m;
  };
  const inCamera = cameraState(scene, NOMINAL, "in_camera");
  const facts: GradeFacts = {
    depth_m,
    filter: named(mountedIn(scene) ?? NO_FILTER),
    curve: camera.curve,
    bits: camera.bits,
    without_delta_e00: errorOf(chartSeen(stage, filter, inCamera, { finish: "in_camera" })),
    delta_e00,
    holds_min_depth_m: holdsTo(-1),
    holds_max_depth_m: holdsTo(1),
    red: qualityOf(recordGrey(stage, filter, cameraState(scene, NOMINAL)).redLight),
  };
  if (finish === "basic_edit") {
    const edit = fitBasicEdit(own.seen, greysIn(own.seen), pictureMatrix(camera.profile));
    return { ...facts, finish, edit };
  }
  const { matrix, offset } = matchedGrade(own.seen);
  const columns = perPlace((k) => pictureOfXyz([matrix[0][k], matrix[1][k], matrix[2][k]]));
  return {
    ...facts,
    finish,
    matrix: perPlace((row): Vector3 => perPlace((k) => columns[k][row])),
    offset: pictureOfXyz(offset),
  };
}
