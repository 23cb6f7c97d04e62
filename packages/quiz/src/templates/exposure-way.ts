import { densityToStops } from "@sunfathom/optics";
import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";

type Control = "aperture" | "iso" | "shutter";

const F_NUMBERS = [2.8, 4, 5.6, 8, 11, 16];
const ISOS = [100, 200, 400, 800, 1600, 3200];
const TIMES_S = [1 / 400, 1 / 200, 1 / 100, 1 / 50, 1 / 25, 1 / 13];
const NEUTRAL = 0.3;
/** Any single turn of a control is one stop, and the error at least this: every turn the right way helps. */
const LEAST_ERROR_STOPS = 1;

/** Options of experts, each with two controls. */
const PAIRS = 5;

interface Turn {
  control: string;
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
    const turns =
      level === "expert"
        ? draw.sample(pairsFrom(f, i, t, maker), PAIRS)
        : draw.sample(turnsFrom(f, i, t, maker), level === "beginner" ? 4 : 5);
    const options: OptionDraft[] = turns.map(({ control, stops, text: said }) => {
      const right = stops * over_stops < 0;
      const misconception = stops === 0 ? "turns_cancel" : "exposure_turned_wrong";
      const effect =
        stops === 0 ? "" : ` ${text.effect({ stops: show.stops(Math.abs(stops)), brighter: stops > 0 })}`;
      return {
        value: `${control} ${stops.toFixed(2)}`,
        text: said,
        right,
        ...(right ? {} : { misconception }),
        feedback: `${right ? say.common.right : say.misconceptions[misconception]}${effect}`,
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
      steps: [
        ...(level === "expert" ? [{ operation: "add" as const, text: text.each }] : []),
        { operation: "compare", text: over_stops > 0 ? text.bright : text.dark },
      ],
      sources: ["f_number", "iso_speed", "density"],
      basis: "definition",
    };
  },
};

const DIALS = { aperture: F_NUMBERS, iso: ISOS, shutter: TIMES_S };
/** Up the list is darker for apertures, brighter for the others. */
const BRIGHTER = { aperture: -1, iso: 1, shutter: 1 } as const;

/** A control turned by so many places of its list; undefined beyond its end. */
function turned(control: Control, at: number, by: number, { say, show }: Maker): Turn | undefined {
  const [from, to] = [DIALS[control][at], DIALS[control][at + by]];
  if (from === undefined || to === undefined) return undefined;
  const as = { aperture: show.f, iso: show.iso, shutter: show.s }[control];
  const text = say.exposure.exposure_way.option[control]({ from: as(from), to: as(to) });
  return { control, stops: BRIGHTER[control] * by, text };
}

function turnsFrom(f: number, i: number, t: number, maker: Maker): Turn[] {
  const { say, show } = maker;
  const single = (["aperture", "iso", "shutter"] as const).flatMap((control) =>
    [-1, 1].map((by) => turned(control, { aperture: f, iso: i, shutter: t }[control], by, maker)),
  );
  const neutral = {
    control: "neutral",
    stops: -densityToStops(NEUTRAL),
    text: say.exposure.exposure_way.option.neutral({ density: show.density(NEUTRAL) }),
  };
  return [...single.filter((turn) => turn !== undefined), neutral];
}

/** Two controls at once, which help, cancel or harm together: what decides is their sum. */
function pairsFrom(f: number, i: number, t: number, maker: Maker): Turn[] {
  const at = { aperture: f, iso: i, shutter: t };
  const kinds = [
    ["aperture", "iso"],
    ["aperture", "shutter"],
    ["iso", "shutter"],
  ] as const;
  const steps = [
    [1, -2],
    [2, -1],
    [-1, 2],
    [-2, 1],
    [1, -1],
    [-1, 1],
  ] as const;
  const { two } = maker.say.exposure.exposure_way;
  return kinds.flatMap(([one, other]) =>
    steps.flatMap(([a, b]) => {
      const first = turned(one, at[one], BRIGHTER[one] * a, maker);
      const second = turned(other, at[other], BRIGHTER[other] * b, maker);
      if (!first || !second) return [];
      return {
        control: `${one} ${a} ${other} ${b}`,
        stops: first.stops + second.stops,
        text: two({ first: first.text, second: second.text }),
      };
    }),
  );
}
