import type { Template } from "../item/template.js";

const THREADS_MM = [43, 46, 49, 52, 55, 58, 62, 67, 72, 77, 82];

const RINGS = 3;

/** Step rings in the order in which they are screwed on. */
export const ringChain: Template = {
  id: "ring_chain",
  topic: "mounting",
  interaction: "ordering",
  levels: ["beginner"],
  make({ draw, say, show }) {
    const threads_mm = draw.sample(THREADS_MM, RINGS + 1);
    const rings = threads_mm.slice(1).map((to_mm, i) => ({ from_mm: threads_mm[i] ?? 0, to_mm }));
    const text = say.mounting.ring_chain;
    const mm = threads_mm.map((t) => show.mm(t));
    const keys = rings.map(({ from_mm }) => String(from_mm));
    return {
      given: { threads_mm },
      stem: text.stem({ lens: mm[0] ?? "", filter: mm[mm.length - 1] ?? "" }),
      answer: {
        interaction: "ordering",
        entries: rings.map(({ from_mm, to_mm }) => ({
          key: String(from_mm),
          text: say.mounting.ring({ from: show.mm(from_mm), to: show.mm(to_mm) }),
        })),
        anticipated: [{ misconception: "order_reversed", keys: [...keys].reverse() }],
      },
      steps: [{ operation: "compare", text: text.last({ threads: mm }) }],
      sources: ["common_practice"],
      basis: "definition",
    };
  },
};
