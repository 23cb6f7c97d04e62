import type { Template } from "../item/template.js";

const ENTRIES = ["dust", "bubbles", "corners", "tape", "lost", "reflection"] as const;
const PAIRS = { beginner: 3, working: 4, expert: 5 };

/** Faults of footage, and what is behind them: common practice. */
export const mountFaults: Template = {
  id: "mount_faults",
  topic: "mounting",
  interaction: "matching",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say }) {
    const text = say.camera.mount_faults;
    const drawn = draw.sample(ENTRIES, PAIRS[level] + 1);
    const spare = draw.pick(drawn);
    const pairs = drawn
      .filter((key) => key !== spare)
      .map((key) => {
        const [left = "", right = ""] = text.pairs[key];
        return { left, right };
      });
    return {
      given: { entries: drawn, spare },
      stem: text.stem,
      answer: {
        interaction: "matching",
        pairs,
        spare: [text.pairs[spare][1] ?? ""],
        misconception: "fault_confused",
      },
      steps: [{ operation: level === "beginner" ? "recall" : "judge", text: text.last({ pairs }) }],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};
