// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Diffuse attenuation of downwelling light per optical water type, 1/m. Source: Jerlov 1976, Marine Optics, 2nd edition, Table XXVII. */
export const JERLOV_1976 = {
  "wavelength_nm": /* @__PURE__ */ evenly(350, 25, 15),
  "I": /* @__PURE__ */ unpack(3, 2, "+e(r}igeuoim/a,b~k,k"),
  "IA": /* @__PURE__ */ unpack(3, 2, ",g(vyoeiqsgq.},bta,k"),
  "IB": /* @__PURE__ */ unpack(3, 2, "-u)h(imggygms.},bta,u"),
  "II": /* @__PURE__ */ unpack(3, 2, "2u*p(yweo}do{.}+tta,k"),
  "III": /* @__PURE__ */ unpack(3, 2, "<k-t+kuam(geg(s.}+ntk+k"),
  "1C": /* @__PURE__ */ unpack(2, 2, "/a)tw}igkeaiypcdq"),
  "3C": /* @__PURE__ */ unpack(2, 2, "2k*~({qskgkcgujbik"),
  "5C": /* @__PURE__ */ unpack(2, 3, "6k+t(kdpbfheaaffob"),
  "7C": /* @__PURE__ */ unpack(2, 2, ";a,~)uus{kimgeigmb"),
  "9C": /* @__PURE__ */ unpack(2, 2, "Aa,~)au(kn{gmuogmke"),
};
