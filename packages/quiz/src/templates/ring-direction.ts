import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";

const THREADS_MM = [49, 52, 55, 58, 62, 67, 72, 77, 82];

/** A ring as from and to, mm. */
type Ring = readonly [number, number];

/** Which step rings join a lens and a filter: one for beginners, a pair in its order for others. */
export const ringDirection: Template = {
  id: "ring_direction",
  topic: "mounting",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  make(maker) {
    const { draw, level, say, show } = maker;
    const two = level === "working";
    const [lens_mm = 0, between_mm = 0, filter_mm = 0] = draw.sample(THREADS_MM, 3);
    const text = say.mounting.ring_direction;
    const both = { lens: show.mm(lens_mm), filter: show.mm(filter_mm) };
    return {
      given: { lens_mm, filter_mm, between_mm, rings: two ? 2 : 1 },
      stem: two ? text.twoStem(both) : text.stem(both),
      answer: {
        interaction: "single_choice",
        options: two
          ? pairs([lens_mm, between_mm, filter_mm], maker)
          : singles([lens_mm, between_mm, filter_mm], maker),
      },
      steps: [
        {
          operation: "compare",
          text: two ? text.twoLast({ ...both, between: show.mm(between_mm) }) : text.last(both),
        },
      ],
      sources: ["common_practice"],
      basis: "definition",
    };
  },
};

type Threads = readonly [lens: number, between: number, filter: number];

function option(rings: readonly Ring[], { say, show }: Maker, misconception?: MisconceptionId): OptionDraft {
  const { ring, ring_direction } = say.mounting;
  const [first = "", second] = rings.map(([from, to]) =>
    (rings.length > 1 ? ring_direction.brief : ring)({ from: show.mm(from), to: show.mm(to) }),
  );
  return {
    value: rings.flat().join(" "),
    text: second === undefined ? first : ring_direction.two({ first, second }),
    right: misconception === undefined,
    ...(misconception ? { misconception } : {}),
  };
}

const singles = ([lens, other, filter]: Threads, maker: Maker): OptionDraft[] => [
  option([[lens, filter]], maker),
  option([[filter, lens]], maker, "ring_turned_about"),
  option([[lens, other]], maker, "ring_same_size"),
  option([[other, filter]], maker, "ring_same_size"),
];

const pairs = ([lens, between, filter]: Threads, maker: Maker): OptionDraft[] => [
  option(
    [
      [lens, between],
      [between, filter],
    ],
    maker,
  ),
  option(
    [
      [between, filter],
      [lens, between],
    ],
    maker,
    "ring_order_swapped",
  ),
  option(
    [
      [filter, between],
      [between, lens],
    ],
    maker,
    "ring_turned_about",
  ),
  option(
    [
      [lens, filter],
      [between, filter],
    ],
    maker,
    "ring_same_size",
  ),
];
