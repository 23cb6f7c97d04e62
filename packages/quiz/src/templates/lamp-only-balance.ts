import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";
import { balanceFor, mixAt } from "../light/remembered.js";
import { atNight, byDay, twoLamps } from "../light/scenes.js";

const DEPTHS_M = [10, 15, 20, 25];
/** By night neither the method nor the loss between lamp and camera depends on the depth. */
const ANY_DEPTH_M = 15;
const KELVINS = [4000, 5000, 5600];

/** Balancing where lamps are the only light. */
export const lampOnlyBalance: Template = {
  id: "lamp_only_balance",
  topic: "balance",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  advises: ["light", "balance"],
  make({ draw, say, show }) {
    const depth_m = draw.pick(DEPTHS_M);
    const distance_m = draw.pick([0.5, 0.8, 1]);
    const kelvin = draw.pick(KELVINS);
    const scene = { ...atNight(byDay("II", 50, ANY_DEPTH_M)), lamps: [twoLamps(distance_m, 4000, kelvin)] };
    const loss = mixAt(scene).depths[0];
    if (balanceFor(scene).method !== "card_at_lamp_distance" || !loss) return undefined;
    const { option, stem, last, loss: lost } = say.balance.lamp_only_balance;
    const every_m = draw.pick([3, 5]);
    const wrong: OptionDraft[] = [
      { value: "surface", text: draw.pick(option.surface), right: false, misconception: "kelvin_of_surface" },
      {
        value: "deeper",
        text: draw.pick(option.deeper({ every: show.m(every_m) })),
        right: false,
        misconception: "depth_shifts_lamp_balance",
      },
      {
        value: "filter",
        text: draw.pick(option.filter),
        right: false,
        misconception: "filter_for_lamp_light",
      },
      {
        value: "higher",
        text: draw.pick(option.higher({ kelvin: show.kelvin(kelvin + 4000) })),
        right: false,
        misconception: "warmer_for_higher_kelvin",
      },
    ];
    const stops = (estimate: { likely: number } | undefined): string => show.stops(estimate?.likely ?? 0, 2);
    return {
      given: { depth_m, distance_m, kelvin },
      stem: stem({ depth: show.m(depth_m), distance: show.m(distance_m), kelvin: show.kelvin(kelvin) }),
      answer: {
        interaction: "single_choice",
        options: [
          { value: "card", text: option.card({ distance: show.m(distance_m) }), right: true },
          ...draw.sample(wrong, 3),
        ],
      },
      steps: [
        {
          operation: "compare",
          text: lost({
            red: stops(loss.lamp_red_water_loss_stops),
            green: stops(loss.lamp_green_water_loss_stops),
            blue: stops(loss.lamp_blue_water_loss_stops),
          }),
        },
        { operation: "recall", text: last },
      ],
      sources: ["path_attenuation", "jerlov_1976", "cie_led_illuminants"],
      basis: "computed",
    };
  },
};
