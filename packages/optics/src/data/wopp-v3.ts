// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Pure-water absorption at 20 °C beyond the reach of Pope & Fry, 1/m. Source: Röttgers et al. 2016, Water Optical Properties Processor v3. */
export const WOPP_V3 = {
  "wavelength_nm": /* @__PURE__ */ evenly(730, 2, 26),
  "absorption_per_m": /* @__PURE__ */ unpack(5, 2, "+[We4U{a)Dl)Dna*<ja(Ul(UlaKxaUpUpaCncb,B~(=s(=qa(1j(1ja"),
};
