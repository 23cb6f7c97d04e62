// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Mean of the peak-normalised sensitivities of 11 anonymous cameras, and the spread of red where it is cross-talk. Source: averaged from sensitivities published by the Academy of Motion Picture Arts and Sciences; see tables/NOTICE-sensor.txt. */
export const MEAN_SENSOR = {
  "wavelength_nm": /* @__PURE__ */ evenly(400, 5, 65),
  "mean_R": /* @__PURE__ */ unpack(5, 2, "(W{/kSe(Zo(7|(<r?x3n(i5b+}7u-oAs-u(t*jAn2jK{7}Fk-w(Oa4i3vNp+EfLv8s?o)GmTi,>g(2w7Eq-Os-Gr/>h8Hd(Tj,Dr(Gc4l7f(,t1~)){,m(0dFu(,w2})/v*o*3a;q(Qa:}(Hw.a7s({*ia"),
  "mean_G": /* @__PURE__ */ unpack(5, 2, "(;a,u>a)HyAtK|7h;{)y4b)i(Gi=c*;qA{[nFf+=n?|/>w(Lu(:hGj6e(Ax)Jj(*l/3f-qLt/t*:xDoNv)k(;~(b5k/jRc>c(>gOi)Le<s()s.oKw(eq+i1g)i/xr4yk-a(y,a(eqiym"),
  "mean_B": /* @__PURE__ */ unpack(5, 2, "*Si*G{)Zs7@{)>p,6t*XtE~Al*W|Aw)9h)6l*2h@~,+lZa)?h)?b(Pz5m(?u+x(+e7u*[aHi(Lm7{Fuu*q9uD{5w-q-e,ma|+k(o-q(}n(qw*{q(i(e/dl/tv-qz*y(e(qknm(mg"),
  "sd_wavelength_nm": /* @__PURE__ */ evenly(400, 5, 34),
  "sd_R": /* @__PURE__ */ unpack(5, 4, "(>};q(9qV|(Dr*PqCrFn1lu.f6s*u3d{*|+vd4g9},pI~:}7sHnVe(KnAaTe(Id*2}PzCzN{"),
};
