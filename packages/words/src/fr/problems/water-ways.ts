import type { waterBases } from "@sunfathom/contract";

const what: Readonly<Record<(typeof waterBases)[number]["field"], string>> = {
  water_type: "type d’eau de Jerlov",
  chlorophyll_mg_m3: "pigment du plancton",
  secchi_depth_m: "avec water_hue",
  visibility_m: "avec water_hue",
  kd_samples: "atténuation mesurée",
  card_samples: "une charte grise à plusieurs profondeurs, avec transfer_curve",
};

/** Les façons de décrire l’eau, pour qui n’en a donné aucune ou plusieurs. */
export const waterWays = /* @__PURE__ */ Object.entries(what)
  .map(([field, said]) => `${field} (${said})`)
  .join(", ");
