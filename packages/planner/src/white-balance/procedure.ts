/** The procedure in words that can be said at a briefing. */
import type { Conditions } from "../light/conditions.js";
import { shown } from "../messages/format.js";
import { spokenDepths } from "../messages/list.js";
import type { WhiteBalanceFigures } from "../result/white-balance.js";

export function procedureOf({ scene }: Conditions, answer: WhiteBalanceFigures): string[] {
  return answer.method === "card_at_lamp_distance"
    ? withLamps(answer)
    : inDaylight(scene.lamps.length > 0, answer);
}

function withLamps({ lamp_kelvin_setting_K }: WhiteBalanceFigures): string[] {
  const kelvin =
    lamp_kelvin_setting_K === undefined
      ? "Without a card there is no kelvin setting that fits these lamps."
      : `Without a card, set ${shown(Math.round(lamp_kelvin_setting_K / 100) * 100)} K; the water between will still show.`;
  return [
    "Switch the lamps on in the water, at full power, and give them a moment.",
    "Hold a grey or white card where the subject will be, facing the camera, lit by the lamps alone.",
    "Fill the middle of the frame with the card and set the white balance to it.",
    kelvin,
    "Keep to that distance: closer or farther, the water takes another share of red. Depth does not matter.",
  ];
}

function outOfReach({ depths }: WhiteBalanceFigures): string[] {
  const first = depths.find(({ in_reach }) => !in_reach);
  if (!first) return [];
  return [
    `From ${shown(first.depth_m, 1)} m on the camera cannot make the card quite neutral: take the nearest it offers and leave the rest to the grade.`,
  ];
}

function inDaylight(hasLamps: boolean, answer: WhiteBalanceFigures): string[] {
  const { balance_depths_descending_m: down, balance_depths_ascending_m: up } = answer;
  const range = answer.depths.length > 1;
  return [
    ...(hasLamps ? ["Switch the lamps off, or turn them away from the card."] : []),
    "Mount the filter first if one is used: the balance goes through it.",
    "Hold a grey or white card upright in front of the subject, out of your own shadow, turned as the subject is.",
    "Fill the middle of the frame with the card and set the white balance to it.",
    ...(range
      ? [`Going down, balance at ${spokenDepths(down)}.`, `Coming up, balance at ${spokenDepths(up)}.`]
      : []),
    ...outOfReach(answer),
    "Balance again when the light changes: a cloud, a shaded wall, another kind of water.",
  ];
}
