// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Kd = Kw + chi * Chl^e for waters whose colour follows the phytoplankton. Source: Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, Table 2. */
export const MOREL_MARITORENA_2001 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 65),
  "Kw_per_m": /* @__PURE__ */ unpack(5, 2, "1510-134 29 42-103 14 74 31 40 17-8 20 71 12 53-124-28 17 17 29 55-42 52 91 78 210 171 21-581-51 94 9 40 150 168-227-80 0 300 240 470 801 470 700 2310-1990-2860-331 432 19 30 140 0 461 80 1599 800-1999-900-101 801 400 899 1301 2200"),
  "chi": /* @__PURE__ */ unpack(5, 3, "12700-400 0 300-252 322-495-1 2-2 2 24 98 8 2-2 0 2-2 1 0 0-1 1 0-1 2-2 8 11 1-1 1 0-2 3-8-73 54-50 150-20-90 90-30-50 0 50-100 100 0-150 100-50 50 50 0-50 100-300 0-300 650-150 100"),
  "e": /* @__PURE__ */ unpack(5, 3, "68500-1200 900-1600 58 2702-2079 0 1-2 2 0-2 2-1 1-2 2-1 1-1-9-29-3 1-1 1-2 3-3 2-1 1-1 0 1 578-1315 1096-400 400 600-900 0 0 0 0 0 0 100 0-200 100-100 200-100 0 0 300-900 0-1800 2700 200-500"),
};
