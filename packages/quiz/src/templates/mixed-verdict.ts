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
/** A light that leads is so much stronger, in every figure that is told; two that fight are nearer than the other. */
const LEADS_BY_STOPS = 3;
const FIGHTS_WITHIN_STOPS = 2;

/** Whether figures of lamps over daylight speak for a verdict, so that whoever reads them can come to it. */
function plain(verdict: Verdict, stops: readonly number[]): boolean {
  switch (verdict) {
    case "lamps_lead":
      return stops.every((s) => s >= LEADS_BY_STOPS);
    case "daylight_leads":
      return stops.every((s) => s <= -LEADS_BY_STOPS);
    case "lights_fight":
      return stops.every((s) => Math.abs(s) <= FIGHTS_WITHIN_STOPS);
  }
}

/** Lamps against daylight. */
export const mixedVerdict: Template = {
  id: "mixed_verdict",
  topic: "lamps",
  interaction: "single_choice",
  levels: ["working", "expert"],
  advises: ["light", "balance"],
  make({ draw, level, say, show }) {
    const wanted = draw.pick(VERDICTS);
    const water = draw.pick(WATERS);
    const depth_m = draw.pick([3, 10, 20]);
    const distance_m = draw.pick([0.3, 0.5, 1.5]);
    const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(distance_m)] }).depths[0];
    const key = mix?.verdict;
    if (!mix || key !== wanted || !isAsked(key) || mix.verdict_clarity !== "clear") return undefined;
    const red = mix.red_lamp_over_daylight_stops?.likely ?? Number.NaN;
    const green = mix.green_lamp_over_daylight_stops?.likely ?? Number.NaN;
    const blue = mix.blue_lamp_over_daylight_stops?.likely ?? Number.NaN;
    const lamp_lx = mix.lamp_illuminance_lx.likely;
    const daylight_lx = mix.daylight_illuminance_lx.likely;
    if (!plain(key, [red, green, blue, Math.log2(lamp_lx / daylight_lx)])) return undefined;
    const text = say.lamps.mixed_verdict;
    const channels = { red: show.signed(red, 1), green: show.signed(green, 1), blue: show.signed(blue, 1) };
    return {
      given: { water, sun_deg: SUN_DEG, depth_m, distance_m, lamp_lx, daylight_lx },
      stem:
        level === "expert"
          ? text.channelStem({ distance: show.m(distance_m), ...channels })
          : text.stem({
              scene: say.common.scene({ water: say.common.water[water], sun: show.deg(SUN_DEG) }),
              depth: show.m(depth_m),
              distance: show.m(distance_m),
              lamp: show.lx(lamp_lx),
              daylight: show.lx(daylight_lx),
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
        { operation: "judge", text: text.compare(channels) },
        { operation: "recall", text: text.last[key] },
      ],
      sources: ["jerlov_1976", "light_field", "path_attenuation", "cie_led_illuminants", "ciede2000"],
      basis: "computed",
    };
  },
};
