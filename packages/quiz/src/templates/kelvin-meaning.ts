import { CCT_MEANINGFUL_DUV } from "@sunfathom/optics";
import type { DepthLight } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { Draft, OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, SUNS_DEG, WATERS, type Water } from "../light/scenes.js";

const OCEAN: readonly Water[] = ["IB", "II"];
const SURFACE_K = 5500;
/** So far beyond the limit that no doubt about the water brings the light back. */
const CLEARLY_DUV = 1.4 * CCT_MEANINGFUL_DUV;
/** So far within it that none takes the light out. */
const WITHIN_DUV = 0.5 * CCT_MEANINGFUL_DUV;
const LEAST_APART_K = 600;

/** McCamy's cubic of 1992: it returns a number for any light, which is the mistake. */
const mcCamy_K = (x: number, y: number): number => {
  const n = (x - 0.332) / (0.1858 - y);
  return ((449 * n + 3525) * n + 6823.3) * n + 5520.33;
};

/** Which light has a colour temperature, and which has none. */
export const kelvinMeaning: Template = {
  id: "kelvin_meaning",
  topic: "balance",
  interaction: "single_choice",
  levels: ["working", "expert"],
  advises: ["balance", "light"],
  make(maker) {
    return ofDaylight(maker, maker.draw.pick(["deep", "shallow"] as const));
  },
};

interface Wrong {
  value: number;
  misconception: MisconceptionId;
}

function options({ draw, say, show }: Maker, right_K: number | undefined, wrong: readonly Wrong[]) {
  const text = say.balance.kelvin_meaning.option;
  const number = (value: number): string => draw.pick(text.number({ kelvin: show.kelvin(value) }));
  const none = draw.pick(text.none);
  const list: OptionDraft[] = [
    right_K === undefined
      ? { value: "none", text: none, right: true }
      : { value: "none", text: none, right: false, misconception: "kelvin_never_fits" },
    ...(right_K === undefined ? [] : [{ value: right_K, text: number(right_K), right: true }]),
    ...wrong.map(({ value, misconception }) => ({
      value,
      text: number(value),
      right: false,
      misconception,
    })),
  ];
  const kelvins = list.map(({ value }) => value).filter((value) => typeof value === "number");
  const near = kelvins.some((a, i) => kelvins.slice(i + 1).some((b) => Math.abs(a - b) < LEAST_APART_K));
  return near ? undefined : list;
}

const hundreds = (kelvin: number): number => Math.round(kelvin / 100) * 100;

function ofDaylight(maker: Maker, kind: "deep" | "shallow"): Draft | undefined {
  const { draw, level, say, show } = maker;
  // Coastal water near the surface hardly changes the colour temperature: nobody could tell the values apart.
  const water = draw.pick(kind === "deep" ? WATERS : OCEAN);
  const sun_deg = draw.pick(SUNS_DEG);
  const depth_m = draw.pick(kind === "deep" ? [8, 10, 12, 14, 16, 18] : [1, 1.5, 2, 2.5]);
  const light = lightAt(byDay(water, sun_deg, depth_m)).depths[0];
  if (!light) return undefined;
  const right_K = meant(light, kind);
  if (right_K === false) return undefined;
  const formula_K = hundreds(mcCamy_K(light.x, light.y));
  const wrong: Wrong[] = [{ value: SURFACE_K, misconception: "kelvin_of_surface" }];
  if (right_K === undefined) {
    if (!(formula_K > 2500 && formula_K < 50000)) return undefined;
    wrong.push({ value: formula_K, misconception: "kelvin_always_fits" });
    wrong.push({ value: 2500, misconception: "warmer_for_higher_kelvin" });
  } else {
    wrong.push({ value: mirrored(right_K), misconception: "warmer_for_higher_kelvin" });
  }
  const list = options(maker, right_K, wrong);
  if (list === undefined) return undefined;
  const text = say.balance.kelvin_meaning;
  // Experts have a meter, and must know when its kelvin mean something.
  const metered = level === "expert";
  const scene = say.common.scene({ water: say.common.water[water], sun: show.deg(sun_deg) });
  return {
    given: { kind, water, sun_deg, depth_m, metered: metered ? "yes" : "no" },
    stem: metered
      ? text.meterStem({
          depth: show.m(depth_m),
          kelvin: show.kelvin(right_K ?? formula_K),
          duv: show.fixed(Math.abs(light.duv), 3),
        })
      : text.stem[kind]({ scene, depth: show.m(depth_m) }),
    answer: { interaction: "single_choice", options: list },
    steps: [
      ...(right_K === undefined
        ? []
        : [{ operation: "compare" as const, text: text.bluer({ surface: show.kelvin(SURFACE_K) }) }]),
      {
        operation: "judge",
        text: text.distance({
          x: show.fixed(light.x, 3),
          y: show.fixed(light.y, 3),
          duv: show.fixed(Math.abs(light.duv), 3),
        }),
      },
      {
        operation: "recall",
        text: right_K === undefined ? text.last.none : text.last.number({ kelvin: show.kelvin(right_K) }),
      },
    ],
    sources: ["cie_1931_observer", "jerlov_1976"],
    basis: "computed",
  };
}

/** The colour temperature to a hundred, undefined where there is none, false where it is not clear whether there is. */
function meant({ cct_K, duv }: DepthLight, kind: "deep" | "shallow"): number | undefined | false {
  if (kind === "deep") return cct_K === undefined && Math.abs(duv) >= CLEARLY_DUV ? undefined : false;
  return cct_K !== undefined && Math.abs(duv) <= WITHIN_DUV ? hundreds(cct_K) : false;
}

/** As far from the light of the surface as this one in mired, to the other side. */
const mirrored = (kelvin: number): number => hundreds(1e6 / (2e6 / SURFACE_K - 1e6 / kelvin));
