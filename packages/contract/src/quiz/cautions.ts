import { list } from "../field/choice.js";
import { Caution } from "../result/common.js";

/** The cautions of a paper: show them with it. */
export const QuizCautions = list(Caution, {
  description: "Cautions to show with the paper. The first says that none of it is a dive plan.",
  example: [
    {
      code: "not_a_dive_planner",
      text: "This is advice on light and colour, not a dive plan. Depth, time, gas and ascent follow your training, your instructor and local rules.",
    },
  ],
});
