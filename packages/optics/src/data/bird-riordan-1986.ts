// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { unpack } from "../spectrum/packed.js";

/** Extraterrestrial irradiance and gas absorption bands of the clear-sky model, over the grid. Source: Bird & Riordan 1986, SERI/TR-215-2436. */
export const BIRD_RIORDAN_1986 = {
  "wavelength_nm": /* @__PURE__ */ unpack(1, 2, "3800 100 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 100 30-60 30 60-144 108-24-120-16 92-31-75 0 0 75"),
  "extraterrestrial_W_m2_nm": /* @__PURE__ */ unpack(4, 1, "11038-700 4453 2222 391-1532 2498 1680 380-560 400-1310 130 180-960 600 70-60-520-720-400-700-1340 70-1110-210-250-10-750-290-240-220-180-220"),
  "water_vapour": /* @__PURE__ */ unpack(5, 0, "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 7500 0 0 0 0 1600 1250 180000 250000 6100 80 10 1 1 60"),
  "ozone": /* @__PURE__ */ unpack(3, 2, "0 0 0 0 0 0 0 3 0 0 2 2 2 1-2 7-3-2 25-36 2-31 5 11-9 13 7 0 1 0 1 0 0-4"),
  "mixed_gas": /* @__PURE__ */ unpack(2, 0, "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 15 0 0 0 0 0 0 400 35 0"),
};
