import type { FilterHolder } from "@sunfathom/planner";

/** Ce qui tient un filtre, au fil d’une phrase. */
export const mountingHolders: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "un filtre vissé sur l’objectif",
  screw_on_port: "un filtre vissé sur le hublot",
  flip: "un porte-filtre basculant sur le hublot",
  clip_on: "un filtre à clipser",
  rear_sheet: "une gélatine derrière l’objectif",
  action_camera: "un cadre devant la vitre de la caméra",
};
