import type { FilterHolder } from "@sunfathom/planner";

/** Lo que sujeta un filtro, dentro de la frase. */
export const mountingHolders: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "un filtro enroscado en el objetivo",
  screw_on_port: "un filtro enroscado en el puerto",
  flip: "un portafiltros abatible en el puerto",
  clip_on: "un filtro de clip",
  rear_sheet: "una lámina detrás del objetivo",
  action_camera: "un marco sobre la ventana de la cámara",
};
