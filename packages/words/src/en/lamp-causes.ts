import type { LampCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** What causes doubt on the light of video lights. */
export const lampCauses: Texts<LampCauses, CauseText> = {
  lamp_beam: () => ({
    text: "How the video light spreads its lumens over the beam",
    how_to_shrink:
      "Ask the maker for a measured beam angle (to half the intensity in the middle) and for lumens out of the front.",
  }),
  lamp_aim: () => ({
    text: "How well the video light is aimed",
    how_to_shrink: "Aim it in the water at arm's length, and check a test picture.",
  }),
  lamp_offset: () => ({
    text: "How far the video lights are from the line of sight",
    how_to_shrink: "Nothing to measure; long arms make it matter less.",
  }),
};
