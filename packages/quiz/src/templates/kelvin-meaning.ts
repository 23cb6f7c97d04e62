import { CCT_MEANINGFUL_DUV } from "@sunfathom/optics";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS } from "../light/scenes.js";

const SURFACE_K = 5500;
/** So far beyond the limit that no doubt about the water brings the light back. */
const CLEARLY_DUV = 1.4 * CCT_MEANINGFUL_DUV;

/** McCamy's cubic of 1992: it returns a number for any light, which is the mistake. */
const mcCamy_K = (x: number, y: number): number => {
  const n = (x - 0.332) / (0.1858 - y);
  return ((449 * n + 3525) * n + 6823.3) * n + 5520.33;
};

/** Light that has no colour temperature. */
export const kelvinMeaning: Template = {
  id: "kelvin_meaning",
  topic: "balance",
  interaction: "single_choice",
  levels: ["working", "expert"],
  advises: ["balance"],
  make({ draw, say, show }) {
    const water = draw.pick(WATERS);
    const sun_deg = draw.pick(SUNS_DEG);
    const depth_m = draw.pick([8, 10, 12, 14, 16, 18]);
    const light = lightAt(byDay(water, sun_deg, depth_m)).depths[0];
    if (!light || light.cct_K !== undefined || Math.abs(light.duv) < CLEARLY_DUV) return undefined;
    const wrong_K = Math.round(mcCamy_K(light.x, light.y) / 100) * 100;
    if (!(wrong_K > 2500 && wrong_K < 50000) || Math.abs(wrong_K - SURFACE_K) < 500) return undefined;
    const text = say.balance.kelvin_meaning;
    const options: OptionDraft[] = [
      { value: "card", text: text.option.card, right: true },
      {
        value: wrong_K,
        text: draw.pick(text.option.number({ kelvin: show.kelvin(wrong_K) })),
        right: false,
        misconception: "kelvin_always_fits",
      },
      {
        value: SURFACE_K,
        text: draw.pick(text.option.surface({ kelvin: show.kelvin(SURFACE_K) })),
        right: false,
        misconception: "kelvin_of_surface",
      },
      {
        value: "lowest",
        text: draw.pick(text.option.lowest),
        right: false,
        misconception: "warmer_for_higher_kelvin",
      },
    ];
    return {
      given: { water, sun_deg, depth_m },
      stem: text.stem({
        scene: say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) }),
        depth: show.m(depth_m),
      }),
      answer: { interaction: "single_choice", options },
      steps: [
        {
          operation: "compare",
          text: text.distance({
            x: show.fixed(light.x, 3),
            y: show.fixed(light.y, 3),
            duv: show.fixed(Math.abs(light.duv), 3),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["cie_1931_observer", "jerlov_1976"],
      basis: "computed",
    };
  },
};
