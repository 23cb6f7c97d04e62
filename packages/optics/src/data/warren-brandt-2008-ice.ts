// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Absorption of pure ice, 1/m: 4 pi times the imaginary refractive index over the wavelength. Source: Warren & Brandt 2008, Journal of Geophysical Research 113, D14220. */
export const WARREN_BRANDT_2008_ICE = {
  "wavelength_nm": /* @__PURE__ */ evenly(390, 10, 40),
  "absorption_per_m": /* @__PURE__ */ unpack(6, 3, "Q}-s(r+s.e1m-p)u<k,k:}*vk;ic2s*j(z.n(w/n(3~/Mg*Zm1Rv*Tl/(a)Lr+Yb.)dH*e89{JP|(Zg(DZj)STa.6h8Al+7yL1v"),
};
