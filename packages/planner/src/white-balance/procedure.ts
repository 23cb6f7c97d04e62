import type { BalanceSteps } from "../codes/balance-procedure.js";
import { type Coded, codesOf } from "../codes/coded.js";
import type { WhiteBalanceFigures } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";

type Procedure = Coded<BalanceSteps>[];

const say = codesOf<BalanceSteps>();

/** What to do, in order. */
export function procedureOf(scene: Scene, answer: WhiteBalanceFigures): Procedure {
  if (answer.method === "kelvin" || answer.method === "auto") return leftAlone(scene, answer);
  return answer.method === "card_at_lamp_distance" ? withLamps(scene, answer) : inDaylight(scene, answer);
}

/** From this cast on that a card would take out, it is worth carrying one: as seen at a glance. */
const WORTH_A_CARD_DELTA_E00 = 5;

function leftAlone({ white_balance_kelvin_K: cct_K }: Scene, { depths }: WhiteBalanceFigures): Procedure {
  const gains = depths.find(
    ({ cast_left_delta_e00: cast, card_cast_left_delta_e00: onCard = cast }) =>
      cast - onCard > WORTH_A_CARD_DELTA_E00,
  );
  return [
    say("filter_first"),
    cct_K === undefined ? say("leave_to_camera") : say("set_kelvin", { cct_K }),
    ...(gains ? [say("card_would_do_better", { depth_m: gains.depth_m })] : []),
  ];
}

const near = ({ subject_distance_m: distance_m }: Scene): Procedure => [say("balance_near", { distance_m })];

const withLamps = (scene: Scene, answer: WhiteBalanceFigures): Procedure => [
  say("lamps_on"),
  ...(scene.subject_in_reach === false ? near(scene) : [say("card_in_lamp_light")]),
  say("fill_frame"),
  answer.lamp_kelvin_setting_K === undefined
    ? say("no_kelvin_fits")
    : say("kelvin", { cct_K: answer.lamp_kelvin_setting_K }),
  say("keep_distance"),
];

function inDaylight(scene: Scene, answer: WhiteBalanceFigures): Procedure {
  const { balance_depths_descending_m: down, balance_depths_ascending_m: up, depths } = answer;
  const outOfReach = depths.find(({ in_reach }) => !in_reach);
  return [
    ...(scene.lamps.length > 0 ? [say("lamps_away")] : []),
    say("filter_first"),
    ...(scene.subject_in_reach === false ? near(scene) : [say("card_upright")]),
    say("fill_frame"),
    ...(depths.length > 1 ? [say("going_down", { depths_m: down }), say("coming_up", { depths_m: up })] : []),
    ...(outOfReach ? [say("out_of_reach", { depth_m: outOfReach.depth_m })] : []),
    say("light_changes"),
  ];
}
