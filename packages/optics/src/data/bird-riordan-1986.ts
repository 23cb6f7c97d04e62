// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { unpack } from "../spectrum/packed.js";

/** Extraterrestrial irradiance and gas absorption bands of the clear-sky model, over the grid. Source: Bird & Riordan 1986, SERI/TR-215-2436. */
export const BIRD_RIORDAN_1986 = {
  "wavelength_nm": /* @__PURE__ */ unpack(1, 2, "+Tk-uaaaaaaaaaaaaaaaa-u)a*~)a+a0r.g(r.~(b-e)b+~aa,a"),
  "extraterrestrial_W_m2_nm": /* @__PURE__ */ unpack(4, 1, "5.{Ut,K{)SeAc(Yd*1q)/a@kLjAu(Jj/u3a(2~Oa+u*~ItV~AtUt(Lj+u(<~4~7ttX~:j6~5t2~5t"),
  "water_vapour": /* @__PURE__ */ unpack(5, 0, "aaaaaaaaaaaaaaaaaaa0Gaaaaa))u(Fk+=Oa-/Au.Qu,kucc+a"),
  "ozone": /* @__PURE__ */ unpack(3, 2, "aaaaaaagaaeeecdofd(u)le)bkwr{oacacaah"),
  "mixed_gas": /* @__PURE__ */ unpack(2, 0, "aaaaaaaaaaaaaaaaaaaaaaaa(aaaaaaaAu)ka"),
};
