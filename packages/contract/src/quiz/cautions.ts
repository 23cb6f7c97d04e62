import { list } from "../field/choice.js";
import { Caution } from "../result/common.js";

/** The cautions of a paper: show them with it. */
export const QuizCautions = list(Caution, {
  description:
    "What to take care of before acting on what the questions are about: show it with the paper. First, that none of it is a dive plan.",
  example: [
    {
      code: "not_a_dive_planner",
      text: "This is advice on light and colour, not a dive plan. Depth, time, gas and ascent follow your training, your instructor and local rules.",
    },
  ],
});
