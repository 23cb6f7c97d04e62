// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Refractive index of sea water (35 psu, 20 °C) against air. Source: Quan & Fry 1995, Applied Optics 34, 3477; air after Ciddor 1996. */
export const QUAN_FRY_1995 = {
  "wavelength_nm": /* @__PURE__ */ evenly(400, 10, 31),
  "index_vs_air": /* @__PURE__ */ unpack(9, 3, "1349937563-945328 72690-8212-7078-6123-5316-4632-4049-3552-3124-2757-2442-2164-1929-1720-1539-1382-1240-1119-1012-913-832-753-689-628-574-526-484-444-409"),
};
