import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";

const THREADS_MM = [49, 52, 55, 58, 62, 67, 72, 77, 82];

/** Which step ring joins a lens and a filter. */
export const ringDirection: Template = {
  id: "ring_direction",
  topic: "mounting",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  make({ draw, say, show }) {
    const [lens_mm = 0, other_mm = 0, filter_mm = 0] = draw.sample(THREADS_MM, 3);
    const ring = (from_mm: number, to_mm: number, misconception?: MisconceptionId): OptionDraft => ({
      value: `${from_mm} ${to_mm}`,
      text: say.mounting.ring({ from: show.mm(from_mm), to: show.mm(to_mm) }),
      right: misconception === undefined,
      ...(misconception ? { misconception } : {}),
    });
    const text = say.mounting.ring_direction;
    const both = { lens: show.mm(lens_mm), filter: show.mm(filter_mm) };
    return {
      given: { lens_mm, filter_mm, other_mm },
      stem: text.stem(both),
      answer: {
        interaction: "single_choice",
        options: [
          ring(lens_mm, filter_mm),
          ring(filter_mm, lens_mm, "ring_turned_about"),
          ring(lens_mm, other_mm, "ring_same_size"),
          ring(other_mm, filter_mm, "ring_same_size"),
        ],
      },
      steps: [{ operation: "compare", text: text.last(both) }],
      sources: ["common_practice"],
      basis: "definition",
    };
  },
};
