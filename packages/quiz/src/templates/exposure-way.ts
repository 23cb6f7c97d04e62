import { densityToStops } from "@sunfathom/optics";
import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";

const F_NUMBERS = [2.8, 4, 5.6, 8, 11, 16];
const ISOS = [100, 200, 400, 800, 1600, 3200];
const TIMES_S = [1 / 400, 1 / 200, 1 / 100, 1 / 50, 1 / 25, 1 / 13];
const NEUTRAL = 0.3;
/** Any single turn of a control is one stop, and the error at least this: every turn the right way helps. */
const LEAST_ERROR_STOPS = 1;

interface Turn {
  control: "aperture" | "iso" | "shutter" | "neutral";
  /** How much brighter the picture gets. */
  stops: number;
  text: string;
}

/** Which way to turn the controls: the error of exposure is stated. */
export const exposureWay: Template = {
  id: "exposure_way",
  topic: "exposure",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  make(maker) {
    const { draw, level, say, show } = maker;
    const [f, i, t] = [1 + draw.below(4), 1 + draw.below(4), 1 + draw.below(4)];
    const over_stops = draw.pick(
      [-3, -2.5, -2, -1.5, 1.5, 2, 2.5, 3].filter((x) => Math.abs(x) > LEAST_ERROR_STOPS),
    );
    const depth_m = draw.pick([3, 5, 8, 10, 12]);
    const text = say.exposure.exposure_way;
    const turns = draw.sample(turnsFrom(f, i, t, maker), level === "beginner" ? 4 : 5);
    const options: OptionDraft[] = turns.map(({ control, stops, text: said }) => {
      const right = stops * over_stops < 0;
      const effect = text.effect({ stops: show.stops(Math.abs(stops)), brighter: stops > 0 });
      return {
        value: `${control} ${stops.toFixed(2)}`,
        text: said,
        right,
        ...(right ? {} : { misconception: "exposure_turned_wrong" as const }),
        feedback: right
          ? `${say.common.right} ${effect}`
          : `${say.misconceptions.exposure_turned_wrong} ${effect}`,
      };
    });
    const set = {
      depth: show.m(depth_m),
      f: show.f(F_NUMBERS[f] ?? 0),
      iso: show.iso(ISOS[i] ?? 0),
      s: show.s(TIMES_S[t] ?? 0),
      stops: show.stops(Math.abs(over_stops)),
    };
    return {
      given: {
        f_number: F_NUMBERS[f] ?? 0,
        iso: ISOS[i] ?? 0,
        shutter_s: TIMES_S[t] ?? 0,
        over_stops,
        depth_m,
        turns: turns.map(({ control, stops }) => `${control} ${stops.toFixed(2)}`),
      },
      stem: over_stops > 0 ? text.brightStem(set) : text.darkStem(set),
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: "compare", text: over_stops > 0 ? text.bright : text.dark }],
      sources: ["f_number", "iso_speed", "density"],
      basis: "definition",
    };
  },
};

function turnsFrom(f: number, i: number, t: number, { say, show }: Maker): Turn[] {
  const { option } = say.exposure.exposure_way;
  const dials = {
    aperture: { list: F_NUMBERS, at: f, as: show.f },
    iso: { list: ISOS, at: i, as: show.iso },
    shutter: { list: TIMES_S, at: t, as: show.s },
  };
  const turn = (control: keyof typeof dials, by: number, stops: number): Turn => {
    const { list, at, as } = dials[control];
    return { control, stops, text: option[control]({ from: as(list[at] ?? 0), to: as(list[at + by] ?? 0) }) };
  };
  return [
    turn("aperture", -1, 1),
    turn("aperture", 1, -1),
    turn("iso", 1, 1),
    turn("iso", -1, -1),
    turn("shutter", 1, 1),
    turn("shutter", -1, -1),
    {
      control: "neutral",
      stops: -densityToStops(NEUTRAL),
      text: option.neutral({ density: show.density(NEUTRAL) }),
    },
  ];
}
