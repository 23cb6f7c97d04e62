import { mired, miredShift } from "@sunfathom/optics";
import type { Draft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";

const KELVINS = [2800, 3200, 3500, 4000, 4500, 5000, 5600, 6500, 7500, 9000];
const LEAST_SHIFT_MIRED = 15;
/** Working with whole mired is near enough. */
const WITHIN = 0.01;

/** A step between two colour temperatures. */
export const miredShiftTemplate: Template = {
  id: "mired_shift",
  topic: "balance",
  interaction: "numeric",
  levels: ["expert"],
  advises: ["light"],
  make({ draw, say, show }) {
    const [from_K = 0, to_K = 0] = draw.shuffle(draw.sample(KELVINS, 2));
    const shift = miredShift(from_K, to_K);
    if (Math.abs(shift) < LEAST_SHIFT_MIRED) return undefined;
    if (draw.below(2) === 0) return behindFilter(from_K, 10 * Math.round(shift / 10), { say, show });
    const text = say.balance.mired_shift;
    const each = { fromMired: show.fixed(mired(from_K), 1), toMired: show.fixed(mired(to_K), 1) };
    return {
      given: { from_K, to_K },
      stem: text.stem({ from: show.kelvin(from_K), to: show.kelvin(to_K) }),
      answer: {
        interaction: "numeric",
        value: shift,
        unit: "mired",
        decimals: 0,
        tolerance: 2,
        anticipated: [
          { misconception: "mired_sign_turned", value: -shift },
          { misconception: "kelvin_subtracted", value: from_K - to_K },
          { misconception: "kelvin_subtracted", value: to_K - from_K },
        ],
      },
      steps: [
        { operation: "multiply", text: text.each({ from: from_K, to: to_K, ...each }) },
        {
          operation: "add",
          text: text.last({ ...each, shift: show.fixed(shift, 1), rounded: show.fixed(shift, 0) }),
        },
      ],
      sources: ["mired"],
      basis: "definition",
    };
  },
};

/** The colour temperature of a light behind a filter whose shift is known. */
function behindFilter(
  from_K: number,
  shift: number,
  { say, show }: Pick<Maker, "say" | "show">,
): Draft | undefined {
  const sum = mired(from_K) + shift;
  const to_K = mired(sum);
  if (to_K < 2500 || to_K > 8000) return undefined;
  const text = say.balance.mired_shift;
  const told = `${shift > 0 ? "+" : ""}${shift}`;
  return {
    given: { from_K, shift },
    stem: text.filterStem({ from: show.kelvin(from_K), shift: told }),
    answer: {
      interaction: "numeric",
      value: to_K,
      unit: "K",
      decimals: 0,
      tolerance: Math.round(to_K * WITHIN),
      anticipated: [
        // Beyond the bluest light of all the other way has no answer.
        ...(mired(from_K) > shift
          ? [{ misconception: "mired_sign_turned" as const, value: mired(mired(from_K) - shift) }]
          : []),
        { misconception: "kelvin_subtracted", value: from_K + shift },
        { misconception: "kelvin_subtracted", value: from_K - shift },
      ],
    },
    steps: [
      {
        operation: "multiply",
        text: text.added({
          from: from_K,
          fromMired: show.fixed(mired(from_K), 1),
          shift: told,
          sum: show.fixed(sum, 1),
        }),
      },
      { operation: "power", text: text.back({ sum: show.fixed(sum, 1), kelvin: show.fixed(to_K, 0) }) },
    ],
    sources: ["mired"],
    basis: "definition",
  };
}
