/** The procedure in words that can be said at a briefing. */
import { BALANCE_PROCEDURE_EN as SAY } from "../messages/balance-procedure-en.js";
import type { WhiteBalanceFigures } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";

export function procedureOf(scene: Scene, answer: WhiteBalanceFigures): string[] {
  return answer.method === "card_at_lamp_distance"
    ? withLamps(answer)
    : inDaylight(scene.lamps.length > 0, answer);
}

const withLamps = ({ lamp_kelvin_setting_K: cct_K }: WhiteBalanceFigures): string[] => [
  SAY.lamps_on(),
  SAY.card_in_lamp_light(),
  SAY.fill_frame(),
  cct_K === undefined ? SAY.no_kelvin_fits() : SAY.kelvin({ cct_K }),
  SAY.keep_distance(),
];

function inDaylight(hasLamps: boolean, answer: WhiteBalanceFigures): string[] {
  const { balance_depths_descending_m: down, balance_depths_ascending_m: up, depths } = answer;
  const outOfReach = depths.find(({ in_reach }) => !in_reach);
  return [
    ...(hasLamps ? [SAY.lamps_away()] : []),
    SAY.filter_first(),
    SAY.card_upright(),
    SAY.fill_frame(),
    ...(depths.length > 1 ? [SAY.going_down({ depths: down }), SAY.coming_up({ depths: up })] : []),
    ...(outOfReach ? [SAY.out_of_reach({ depth_m: outOfReach.depth_m })] : []),
    SAY.light_changes(),
  ];
}
