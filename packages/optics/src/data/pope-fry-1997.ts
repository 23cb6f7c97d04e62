// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Pure-water absorption, 1/m. Source: Pope & Fry 1997, Applied Optics 36, 8710, Table 3. */
export const POPE_FRY_1997 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 70),
  "absorption_per_m": /* @__PURE__ */ unpack(5, 2, "1137-196 106 52-112 17 76 28 39 14-7 18 70 11 55-131-23 15 17 31 50-40 50 90 80 210 170 20-580-50 90 10 40 150 170-230-80 0 300 240 470 800 470 700 2310-1990-2860-330 430 20 30 140 0 460 80 1600 800-2000-900-100 800 400 900 1300 2200 1500 4300 5700 4400 3400"),
};
