import type { LampCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";

/** Qué hace dudar de la luz de los focos de vídeo. */
export const lampCauses: Texts<LampCauses, CauseText> = {
  lamp_beam: () => ({
    text: "Cómo reparte el foco de vídeo sus lúmenes por el haz",
    how_to_shrink:
      "Pida al fabricante el ángulo de haz medido (hasta la mitad de la intensidad del centro) y los lúmenes que salen por delante.",
  }),
  lamp_aim: () => ({
    text: "Lo bien orientado que está el foco de vídeo",
    how_to_shrink: "Oriéntelo en el agua con el brazo extendido y mire una imagen de prueba.",
  }),
  lamp_offset: () => ({
    text: "Lo lejos que están los focos de vídeo del eje de la toma",
    how_to_shrink: "No hay nada que medir; con brazos largos importa menos.",
  }),
};
