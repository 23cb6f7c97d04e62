import type { waterBases } from "@sunfathom/contract";

const what: Readonly<Record<(typeof waterBases)[number]["field"], string>> = {
  water_type: "tipo óptico de Jerlov",
  chlorophyll_mg_m3: "pigmento del plancton",
  secchi_depth_m: "con water_hue",
  visibility_m: "con water_hue",
  kd_samples: "atenuación medida",
  card_samples: "una tarjeta gris a varias profundidades, con transfer_curve",
};

/** Las maneras de describir el agua, para quien no dio ninguna o dio varias. */
export const waterWays = /* @__PURE__ */ Object.entries(what)
  .map(([field, said]) => `${field} (${said})`)
  .join(", ");
