// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Kd = Kw + chi * Chl^e for waters whose colour follows the phytoplankton. Source: Morel & Maritorena 2001, Journal of Geophysical Research 106, 7163, Table 2. */
export const MOREL_MARITORENA_2001 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 65),
  "Kw_per_m": /* @__PURE__ */ unpack(5, 3, "(Wu/|(}{0t.y+a)zs(p(t({*m*|)w2x-m*aay(w-n-i)sz/y)r0~OdJk0u,t)c.k(gAj0y,k;a*~6k=c=b6k)*k,At(,~*3sY{Bpw.k0jEw@l(Xi((h*Er(<i((i(/eAvHiAy(.}"),
  "chi": /* @__PURE__ */ unpack(5, 3, "75uAta;a7x<oG~bede(s-qqedaedcaabcabedqwcbcadgp+z*s*j1a(j,~-a(~*ja*k-t-ua0~-u*j*k*ka*j-u:~a:~Rk0~-u"),
  "e": /* @__PURE__ */ unpack(5, 3, "(JQu(B~(/a))t*{*?e)Iracdeadebcdebcbr(|fcbcdgfebcbacMq(Jt(<cAtAuOa(.~aaaaaa-ua4j-u-t4k-taa;a(.~a)6~*?a4kHj"),
};
