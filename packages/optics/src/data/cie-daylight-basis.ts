// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Daylight components S0, S1, S2. Source: CIE 15. */
export const CIE_DAYLIGHT_BASIS = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "S0": /* @__PURE__ */ unpack(2, 2, "/-u/aa(Kua(2jaDtaH~a(Jka8~aNja4ta5aa@~a?ua-ja-ta=aa:ja/ua2ta(ka1ka7~a?ua,ja,ta/ja9ka5ja4aa,ka:ta:jaNka~aYta(:ua1ja(+~a9~a)?aa(Dta"),
  "S1": /* @__PURE__ */ unpack(2, 2, "+Wu2taNua9ja8ta5ta<ka(ja/ja+ta*ua(~a(aa*aa,ja.aa)aa(ja(ka(aa~a-ka.ta*aaaa(ua(ta,ka+~a)ja/aa+aa0ta,ua-ka1~a(ka/ua(ka:ja5aa"),
  "S2": /* @__PURE__ */ unpack(2, 2, ";a,~a(ta0ua)ta~a)~a*ua(kakata)ua(tajajaka(aa~akajaka+ka(tata~ata+aa*ja)kaja)ta.ta1ua.~a(ja.aata,tata3ka0ja"),
};
