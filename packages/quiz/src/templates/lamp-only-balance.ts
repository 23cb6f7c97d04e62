import type { MisconceptionId } from "@sunfathom/words";
import type { Draft, OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { balanceFor, mixAt } from "../light/remembered.js";
import { anyBalance, atNight, byDay, twoLamps, type WATERS } from "../light/scenes.js";

const SUN_DEG = 50;
/** By night neither the method nor the loss between lamp and camera depends on the depth. */
const ANY_DEPTH_M = 15;
const KELVINS = [4000, 5000, 5600];
/** So much more red than green, from one distance to the other, shows. */
const SHOWS_STOPS = 0.25;

/** Another distance under water is a case of its own, and the one to be seen. */
const CASES = ["night", "moving", "moving", "day"] as const;
const CASES_OF_BEGINNERS = ["night", "day"] as const;
const ANSWERS = { night: "once", moving: "distance", day: "depth" } as const;
type Case = (typeof CASES)[number];
type Answer = "once" | "distance" | "depth" | "surface";

/** What each answer gets wrong in a case where it is not the right one. */
const MISTAKE: Record<Answer, MisconceptionId> = {
  once: "one_balance_for_all",
  distance: "distance_shifts_balance",
  depth: "depth_shifts_lamp_balance",
  surface: "kelvin_of_surface",
};

/** When the light on a card changes: at night, with another distance, and in daylight on the way down. */
export const lampOnlyBalance: Template = {
  id: "lamp_only_balance",
  topic: "balance",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  advises: ["light", "balance"],
  make(maker) {
    const cases = maker.level === "beginner" ? CASES_OF_BEGINNERS : CASES;
    return { night, moving, day }[maker.draw.pick(cases)](maker);
  },
};

const scene = (distance_m: number, kelvin: number, water: (typeof WATERS)[number] = "II") => ({
  ...atNight(byDay(water, SUN_DEG, ANY_DEPTH_M)),
  lamps: [twoLamps(distance_m, 4000, kelvin)],
});

function answers(where: Case, { draw, say }: Maker): OptionDraft[] {
  const { option } = say.balance.lamp_only_balance;
  return (["once", "distance", "depth", "surface"] as const).map((value) => {
    const right = value === ANSWERS[where];
    const text = draw.pick(option[value]);
    return right ? { value, text, right } : { value, text, right, misconception: MISTAKE[value] };
  });
}

function night(maker: Maker): Draft | undefined {
  const { draw, say, show } = maker;
  const depth_m = draw.pick([10, 15, 20, 25]);
  const distance_m = draw.pick([0.5, 0.8, 1]);
  const kelvin = draw.pick(KELVINS);
  const loss = mixAt(scene(distance_m, kelvin)).depths[0];
  if (balanceFor(scene(distance_m, kelvin)).method !== "card_at_lamp_distance" || !loss) return undefined;
  const text = say.balance.lamp_only_balance;
  const stops = (estimate: { likely: number } | undefined): string => show.stops(estimate?.likely ?? 0, 1);
  return {
    given: { case: "night", depth_m, distance_m, kelvin },
    stem: text.stem.night({
      depth: show.m(depth_m),
      distance: show.m(distance_m),
      kelvin: show.kelvin(kelvin),
    }),
    answer: { interaction: "single_choice", options: answers("night", maker) },
    steps: [
      {
        operation: maker.level === "beginner" ? "compare" : "judge",
        text: text.loss({
          red: stops(loss.lamp_red_water_loss_stops),
          green: stops(loss.lamp_green_water_loss_stops),
          blue: stops(loss.lamp_blue_water_loss_stops),
        }),
      },
      { operation: "recall", text: text.last.night },
    ],
    sources: ["path_attenuation", "jerlov_1976", "cie_led_illuminants"],
    basis: "computed",
  };
}

function moving(maker: Maker): Draft | undefined {
  const { draw, say, show } = maker;
  const water = draw.pick(["IB", "II", "1C"] as const);
  const kelvin = draw.pick(KELVINS);
  const [near_m, far_m] = draw.pick([
    [0.3, 3],
    [0.4, 3],
  ] as const);
  const redMore = (distance_m: number): number => {
    const at = mixAt(scene(distance_m, kelvin, water)).depths[0];
    return (at?.lamp_red_water_loss_stops?.likely ?? 0) - (at?.lamp_green_water_loss_stops?.likely ?? 0);
  };
  if (redMore(far_m) - redMore(near_m) < SHOWS_STOPS) return undefined;
  const text = say.balance.lamp_only_balance;
  const distances = { near: show.m(near_m), far: show.m(far_m) };
  return {
    given: { case: "moving", water, near_m, far_m, kelvin },
    stem: text.stem.moving({ ...distances, water: say.common.water[water], kelvin: show.kelvin(kelvin) }),
    answer: { interaction: "single_choice", options: answers("moving", maker) },
    steps: [
      {
        operation: maker.level === "beginner" ? "compare" : "judge",
        text: text.losses({
          ...distances,
          nearMore: show.stops(redMore(near_m)),
          farMore: show.stops(redMore(far_m)),
        }),
      },
      { operation: "recall", text: text.last.moving },
    ],
    sources: ["path_attenuation", "jerlov_1976", "cie_led_illuminants"],
    basis: "computed",
  };
}

function day(maker: Maker): Draft | undefined {
  const { draw, say, show } = maker;
  const water = draw.pick(["IB", "II", "1C", "3C"] as const);
  const [from_m, to_m] = draw.pick([
    [5, 15],
    [3, 18],
  ] as const);
  const distance_m = draw.pick([1, 1.5]);
  const depths_m = balanceFor(anyBalance(byDay(water, SUN_DEG, from_m, to_m))).balance_depths_descending_m;
  if (depths_m.length < 3) return undefined;
  const text = say.balance.lamp_only_balance;
  return {
    given: { case: "day", water, from_m, to_m, distance_m },
    stem: text.stem.day({
      from: show.m(from_m),
      to: show.m(to_m),
      distance: show.m(distance_m),
      water: say.common.water[water],
    }),
    answer: { interaction: "single_choice", options: answers("day", maker) },
    steps: [
      {
        operation: maker.level === "beginner" ? "compare" : "judge",
        text: text.depths({ depths: depths_m.slice(1).map((m) => show.m(Math.round(m))) }),
      },
      { operation: "recall", text: text.last.day },
    ],
    sources: ["jerlov_1976", "mean_sensor", "ciede2000"],
    basis: "computed",
  };
}
