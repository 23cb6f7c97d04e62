import type { LampCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Was am Licht der Videolampen unsicher ist. */
export const lampCauses: Texts<LampCauses, CauseText> = {
  lamp_beam: () => ({
    text: "Wie die Videolampe ihre Lumen über den Lichtkegel verteilt",
    how_to_shrink:
      "Frag den Hersteller nach dem gemessenen Leuchtwinkel (bis zur halben Helligkeit der Mitte) und nach den Lumen, die vorn herauskommen.",
  }),
  lamp_aim: () => ({
    text: "Wie gut die Videolampe ausgerichtet ist",
    how_to_shrink: "Richte sie im Wasser auf Armlänge aus, und prüf ein Testbild.",
  }),
  lamp_offset: () => ({
    text: "Wie weit die Videolampen von der Blickachse entfernt sind",
    how_to_shrink: "Mit langen Armen fällt es weniger ins Gewicht.",
  }),
};
