// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Relative power of the illuminants D55 and D65. Source: CIE 15. */
export const CIE_ILLUMINANTS = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "D55": /* @__PURE__ */ unpack(3, 2, "POi*Bmc2-sa0Orc)Wxc+5zb4J{b*;va-9ra(Wta)/qa+Ppb+Iea(Ifb?ba*/kc+*ba(Vea)>xa-ea)-qc+;lc,Yeb(>nb()ta(Rba*Goa*=ra*/ub(;kc+Uha+(nb/GccMta1Hxc60ea)/na3)xb*RbbB*ma8?dc"),
  "D65": /* @__PURE__ */ unpack(4, 2, "37LaDXqc)U2ic);1rcR@xa(*Mnc**QucMLru(;J~a?*~u@Lka[;taX*ku4=ta09taLUauNHja9Muu>Hja)=wa:Z{aQ(la((Zua2*|c0Dxa7+rcEU{aA/~a?Mwa3(eaMQ|aD6dc(5Zqa,?ac(V4ta)EO{a:Mva)*(hcK<nc+GOqa)WGra"),
};
