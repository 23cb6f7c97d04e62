// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Scattering of pure sea water (35 psu, 20 °C), 1/m. Source: Zhang, Hu & He 2009, Optics Express 17, 5698. */
export const ZHANG_HU_HE_2009 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "scattering_per_m": /* @__PURE__ */ unpack(7, 4, ")(Ci,Rb;{(vibkagbiacagbcedgdifcebcdihkjkfaeadgfgdcbgfagfebaaehkhebcabcbefgdehmjcghgdcaab"),
};
