// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Relative power of the LED illuminants. Source: CIE 15:2018, Table 12. */
export const CIE_LED_ILLUMINANTS = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "LED-B1": /* @__PURE__ */ unpack(2, 3, "acbeaaiaoes{)an/x.h,o/goh{nxjlnbdcebgbakfafchffjhdhbacgmbiegigcgbeacbdaiddcdaabcdaabcb"),
  "LED-B2": /* @__PURE__ */ unpack(2, 3, "aaacbecimoso)y*i2r7|-{8im*n)me(zjnxjbcmaagfefenehghfbfjacagcgegcgigdcgbcabaabcbbabaabaaaba"),
  "LED-B3": /* @__PURE__ */ unpack(2, 4, "aacbgbiioif(i*}6l?vA{Ow6xBt.}+g+~s(anq{ekbbjadcfonmfecleabecebaebcbbcabdeadacaabagjidcchkfcaa"),
  "LED-B4": /* @__PURE__ */ unpack(2, 4, "aaacbegoybjj+q)xEb-zXg?wFp7t.o(a(l(oaxzqigm}necblijkadafmlqlaqtmjkbfdodhamlcaihbecdcaadiddgdg"),
  "LED-B5": /* @__PURE__ */ unpack(2, 4, "acbgfgesqmbm*{)rH~4b(*qKeH~>v/o(i)v(m{zfkqeuabedgjfggjmlcgfecbacfifbijgbaejibdcihaaghecfgafgdc"),
  "LED-BH1": /* @__PURE__ */ unpack(2, 3, "acaccgu{wr(x{(h*h*jo*{*{(cllgmoof(l)ftrhn(cmqbgbggcuk})a)w*m+}-qIh(6n<k(Em;yD|0j*dxndhcbadebabcbbccbbcadgf"),
  "LED-RGB1": /* @__PURE__ */ unpack(2, 3, "aaacbecimkijj}(n1n(u4g(f(~(u{a(ck(z,f-d+z(o+},{)}ordfrflebkkw(i){*k-{0g(}Wb)>x(1q)Ym;zCx0p,j)j|ljelcebfkjccdgfaedab"),
  "LED-V1": /* @__PURE__ */ unpack(2, 3, "ces(y.{6c1f(.v/|(1k0e.n+r*f(prlgmdajttbegoimacdbhebckgceinc(jubzfpcahmhqiieiekdodicfbcaabcjijidj"),
  "LED-V2": /* @__PURE__ */ unpack(2, 3, "ck(a*s2s2w@h((b0cSc3m(p+t+f)|)fxawmdaxpkesmikafepabcbkbkdmlbtofpitgdbidgcqfgmhiabkafaaaehebdirsh"),
};
