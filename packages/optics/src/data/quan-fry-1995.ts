// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Refractive index of sea water (35 psu, 20 °C) against air. Source: Quan & Fry 1995, Applied Optics 34, 3477; air after Ciddor 1996. */
export const QUAN_FRY_1995 = {
  "wavelength_nm": /* @__PURE__ */ evenly(400, 10, 31),
  "index_vs_air": /* @__PURE__ */ unpack(9, 4, "37)@0q>6Xz(P1a1Bn(>s(2u((yTsM{HeCq?o<a9q6u4}3c1o0o/c.e-s,m,i+i+c*s*g)y)u)k"),
};
