// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Daylight components S0, S1, S2, by 10 nm: CIE 15 has them on straight lines between. Source: CIE 15. */
export const CIE_DAYLIGHT_BASIS = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 10, 41),
  "S0": /* @__PURE__ */ unpack(1, 1, "Qi(s:k-uw-b2m.yb)xa,fh(p)z(q)jr)|)tr*~}d(h)|w)do(q)l-h(s(m/v,s*q.z2t4})l"),
  "S1": /* @__PURE__ */ unpack(1, 2, "@u)j.}*t*p)|+ih(t|wlgs(b(mmhigf(i(psakj(c~n(sy(|(e(i)fi(wi*z)y"),
  "S2": /* @__PURE__ */ unpack(1, 1, ")a(f(pmdj|fceaqgecekegeg(cwsmi(cm{yi(h{v~miz~(ol"),
};
