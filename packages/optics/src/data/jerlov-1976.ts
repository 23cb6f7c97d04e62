// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Diffuse attenuation of downwelling light per optical water type, 1/m. Source: Jerlov 1976, Marine Optics, 2nd edition, Table XXVII. */
export const JERLOV_1976 = {
  "wavelength_nm": /* @__PURE__ */ evenly(350, 25, 15),
  "I": /* @__PURE__ */ unpack(3, 2, "62-24 14 4 3 2 10 7 4 6 120-76-15 5 80"),
  "IA": /* @__PURE__ */ unpack(3, 2, "78-26 12 7 2 4 8 9 3 8 119-76-10 0 80"),
  "IB": /* @__PURE__ */ unpack(3, 2, "100-34 19 6 3 3 12 3 6 9 119-76-10 0 85"),
  "II": /* @__PURE__ */ unpack(3, 2, "175-53 27 11 2 7 14-2 7 13 119-70-10 0 80"),
  "III": /* @__PURE__ */ unpack(3, 2, "320-100 65 10 0 6 18 2 3 24 119-67-10 5 65"),
  "1C": /* @__PURE__ */ unpack(2, 2, "120-40 11 14 4 3 5 2 0 4 12-8 1-2 8"),
  "3C": /* @__PURE__ */ unpack(2, 2, "170-60 28 8 9 5 3 5 1 3 10-5-1 4 5"),
  "5C": /* @__PURE__ */ unpack(2, 3, "230-70 20-2-8-1-3-4 2 0 0-3-3 7-1"),
  "7C": /* @__PURE__ */ unpack(2, 3, "300-90 40-30-1 4-8-1 2-3-1 2-1 3-7"),
  "9C": /* @__PURE__ */ unpack(2, 2, "390-90 30 10 20-7 13 3 6 10 7 3 6 5 2"),
};
