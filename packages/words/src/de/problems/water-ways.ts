import type { waterBases } from "@sunfathom/contract";

const what: Readonly<Record<(typeof waterBases)[number]["field"], string>> = {
  water_type: "optischer Typ nach Jerlov",
  chlorophyll_mg_m3: "Pigment des Planktons",
  secchi_depth_m: "mit water_hue",
  visibility_m: "mit water_hue",
  kd_samples: "gemessene Attenuation",
  card_samples: "eine Graukarte in mehreren Tiefen, mit transfer_curve",
};

/** Die Arten, das Wasser zu beschreiben, wo keine oder mehrere angegeben sind. */
export const waterWays = /* @__PURE__ */ Object.entries(what)
  .map(([field, said]) => `${field} (${said})`)
  .join(", ");
