import type { MixedLightVerdict } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { Template } from "../item/template.js";
import { mixAt } from "../light/remembered.js";
import { byDay, twoLamps, WATERS } from "../light/scenes.js";

const SUN_DEG = 50;
const VERDICTS = ["lamps_lead", "daylight_leads", "lights_fight"] as const;
type Verdict = (typeof VERDICTS)[number];
const MISTAKE: Record<Verdict, MisconceptionId> = {
  lamps_lead: "lamps_always_lead",
  daylight_leads: "daylight_always_leads",
  lights_fight: "lights_blend_evenly",
};
const isAsked = (verdict: MixedLightVerdict | undefined): verdict is Verdict =>
  VERDICTS.some((known) => known === verdict);
const signed = (value: number | undefined): string =>
  value === undefined ? "" : `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(1)}`;

/** Lamps against daylight. */
export const mixedVerdict: Template = {
  id: "mixed_verdict",
  topic: "lamps",
  interaction: "single_choice",
  levels: ["working", "expert"],
  advises: ["light", "balance"],
  make({ draw, say, show }) {
    const water = draw.pick(WATERS);
    const depth_m = draw.pick([3, 10, 20]);
    const distance_m = draw.pick([0.5, 1.5]);
    const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(distance_m)] }).depths[0];
    const key = mix?.verdict;
    if (!mix || !isAsked(key) || mix.verdict_clarity !== "clear") return undefined;
    const text = say.lamps.mixed_verdict;
    return {
      given: { water, sun_deg: SUN_DEG, depth_m, distance_m },
      stem: text.stem({
        scene: say.common.scene({ water: say.common.water[water], sun: show.deg(SUN_DEG) }),
        depth: show.m(depth_m),
        distance: show.m(distance_m),
        lamp: show.lx(mix.lamp_illuminance_lx.likely),
        daylight: show.lx(mix.daylight_illuminance_lx.likely),
      }),
      answer: {
        interaction: "single_choice",
        options: VERDICTS.map((verdict) => ({
          value: verdict,
          text: text.option[verdict],
          right: verdict === key,
          ...(verdict === key ? {} : { misconception: MISTAKE[verdict] }),
        })),
      },
      steps: [
        {
          operation: "compare",
          text: text.compare({
            red: signed(mix.red_lamp_over_daylight_stops?.likely),
            green: signed(mix.green_lamp_over_daylight_stops?.likely),
            blue: signed(mix.blue_lamp_over_daylight_stops?.likely),
          }),
        },
        { operation: "recall", text: text.last[key] },
      ],
      sources: ["jerlov_1976", "light_field", "path_attenuation", "cie_led_illuminants", "ciede2000"],
      basis: "computed",
    };
  },
};
