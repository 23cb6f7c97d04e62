// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Pure-water absorption, 1/m. Source: Pope & Fry 1997, Applied Optics 36, 8710, Table 3. */
export const POPE_FRY_1997 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 70),
  "absorption_per_m": /* @__PURE__ */ unpack(5, 3, "(>y4b.c*r1|/s*}*fw(t(l(u*o*|)}3l.g)qe}(i,~-a)ut/u)t0~N~Jk0k,j)a.k(kAt1a,k;a*~6k=a<~6k)*k,At(,~*3uYuBju.k0jEu@j(Xk((j*Et(<k((k(/aAtHkAu(/aUt*Eu(Pk(It(5t"),
};
