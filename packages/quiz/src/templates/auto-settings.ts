import type { Template } from "../item/template.js";

const ENTRIES = ["colour_jumps", "brightness_pumps", "noise", "smear", "hunting", "edges"] as const;
const PAIRS = { beginner: 3, working: 4, expert: 5 };

/** Faults of footage that automatics make, and the setting that cures each: common practice. */
export const autoSettings: Template = {
  id: "auto_settings",
  topic: "exposure",
  interaction: "matching",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say }) {
    const text = say.camera.auto_settings;
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
        misconception: "auto_setting_confused",
      },
      steps: [{ operation: level === "beginner" ? "recall" : "judge", text: text.last({ pairs }) }],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};
