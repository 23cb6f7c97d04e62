import type { waterBases } from "@sunfathom/contract";

const what: Readonly<Record<(typeof waterBases)[number]["field"], string>> = {
  water_type: "optical type by Jerlov",
  chlorophyll_mg_m3: "pigment of the plankton",
  secchi_depth_m: "with water_hue",
  visibility_m: "with water_hue",
  kd_samples: "measured attenuation",
  card_samples: "a grey card at several depths, with transfer_curve",
};

/** The ways to describe the water, for a scene that gives none or several. */
export const waterWays = /* @__PURE__ */ Object.entries(what)
  .map(([field, said]) => `${field} (${said})`)
  .join(", ");
