import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { balanceFor, mixAt } from "../light/remembered.js";
import { anyBalance, byDay, twoLamps, type Water } from "../light/scenes.js";

const WAYS = [
  [5, 15],
  [4, 12],
  [3, 10],
] as const;
const LITTLE_M = [
  [16, 18],
  [18, 20],
  [17, 19],
] as const;
const LAMPS_M = 0.5;
const SUN_DEG = 50;
const COUNT = { beginner: 4, working: 5, expert: 5 };

/** When a balance no longer holds. */
export const whenToBalance: Template = {
  id: "when_to_balance",
  topic: "balance",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light", "balance", "filter_under_water", "way_up"],
  make(maker) {
    const { draw, level, say } = maker;
    const way = daylightWay(maker);
    if (way === undefined) return undefined;
    const others = [lampsOn(maker), filterOn(maker)].filter((o) => o !== undefined);
    // The way down or up in daylight is the case that matters most: it is among the options more often than not.
    const rest = draw.below(4) === 0 ? others : [way, ...others];
    const first = rest[0] === way ? [way] : [];
    // Experts must see that deep down a few metres change too little.
    const little = level === "expert" && draw.below(4) > 0 ? littleDeep(maker) : undefined;
    const sure = little === undefined ? first : [...first, little];
    const more = draw.sample([...rest.slice(first.length), ...keeping(maker)], COUNT[level] - sure.length);
    const options = [...sure, ...more];
    const { stem, last } = say.balance.when_to_balance;
    return {
      given: { options: options.map(({ value }) => String(value)) },
      stem,
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: level === "beginner" ? "recall" : "judge", text: last }],
      sources: ["ciede2000", "jerlov_1976", "mean_sensor"],
      basis: "computed",
    };
  },
};

/** A way down or up in daylight after which the planner asks for a new balance; undefined where it does not. */
function daylightWay({ draw, say, show }: Maker): OptionDraft | undefined {
  const water: Water = draw.pick(["IB", "II", "1C", "3C"]);
  const [upper_m, lower_m] = draw.pick(WAYS);
  const kind = draw.pick(["descend", "ascend"] as const);
  const answer = balanceFor(anyBalance(byDay(water, SUN_DEG, upper_m, lower_m)));
  const depths = kind === "descend" ? answer.balance_depths_descending_m : answer.balance_depths_ascending_m;
  if (depths.length < 2) return undefined;
  const [from_m, to_m] = kind === "descend" ? [upper_m, lower_m] : [lower_m, upper_m];
  const { option, feedback } = say.balance.when_to_balance;
  const words = { from: show.m(from_m), to: show.m(to_m), water: say.common.water[water] };
  return {
    value: `${kind} ${water} ${from_m} ${to_m}`,
    text: draw.pick(option[kind](words)),
    right: true,
    feedback: feedback[kind],
  };
}

/** A short way deep down after which the planner asks for none. */
function littleDeep({ draw, say, show }: Maker): OptionDraft | undefined {
  const water: Water = draw.pick(["IB", "II"]);
  const [upper_m, lower_m] = draw.pick(LITTLE_M);
  if (balanceFor(anyBalance(byDay(water, SUN_DEG, upper_m, lower_m))).balance_depths_descending_m.length > 1)
    return undefined;
  const { option } = say.balance.when_to_balance;
  return {
    value: `little ${water} ${upper_m} ${lower_m}`,
    text: option.little({ from: show.m(upper_m), to: show.m(lower_m), water: say.common.water[water] }),
    right: false,
    misconception: "every_metre_balanced",
  };
}

/** Lamps that lead once they are on; undefined where the planner is not sure of it. */
function lampsOn({ draw, say, show }: Maker): OptionDraft | undefined {
  const water: Water = draw.pick(["3C", "5C"]);
  const depth_m = draw.pick([15, 18]);
  const mix = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(LAMPS_M)] }).depths[0];
  if (mix?.verdict !== "lamps_lead" || mix.verdict_clarity !== "clear") return undefined;
  const { option, feedback } = say.balance.when_to_balance;
  return {
    value: `lamps_on ${water} ${depth_m}`,
    text: option.lamps_on({
      depth: show.m(depth_m),
      distance: show.m(LAMPS_M),
      water: say.common.water[water],
    }),
    right: true,
    feedback: feedback.lamps_on,
  };
}

function filterOn({ draw, say }: Maker): OptionDraft {
  const kind = draw.pick(["red", "magenta"] as const);
  const { option, feedback } = say.balance.when_to_balance;
  return {
    value: `filter_on ${kind}`,
    text: draw.pick(option.filter_on({ kind })),
    right: true,
    feedback: feedback.filter_on,
  };
}

/** What leaves the light as it is. */
function keeping({ draw, say, show }: Maker): OptionDraft[] {
  const { option } = say.balance.when_to_balance;
  const depth_m = draw.pick([6, 8, 10, 12]);
  const minutes = draw.pick([5, 10, 15]);
  const from_m = draw.pick([6, 8, 10]);
  const to_m = from_m + draw.pick([6, 8, 10]);
  const colour = draw.pick(["red", "yellow", "purple"] as const);
  const iso = draw.pick([200, 400, 800]);
  return [
    {
      value: `level ${depth_m} ${minutes}`,
      text: draw.pick(option.level({ depth: show.m(depth_m), minutes })),
      right: false,
      misconception: "balance_follows_time",
    },
    {
      value: `night_descend ${from_m} ${to_m}`,
      text: option.night_descend({ from: show.m(from_m), to: show.m(to_m) }),
      right: false,
      misconception: "depth_shifts_lamp_balance",
    },
    {
      value: `subject ${colour}`,
      text: draw.pick(option.subject({ colour })),
      right: false,
      misconception: "balance_follows_subject",
    },
    {
      value: `iso ${iso}`,
      text: draw.pick(option.iso({ from: show.iso(iso), to: show.iso(2 * iso) })),
      right: false,
      misconception: "balance_follows_exposure",
    },
  ];
}
