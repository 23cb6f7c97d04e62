// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Colour-matching functions of the 2 degree observer; y_bar is V(lambda). Source: CIE 15; ISO/CIE 11664-1. */
export const CIE_1931_OBSERVER = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "x_bar": /* @__PURE__ */ unpack(6, 4, "(Ng(,{(>}8m))e*Kl4.q/Pj/6k1(jU(~BMa7Hk-Cu+Ca*(j4Pj+7a*HjD0k91t)[t(6k.Qt)Dk(/u)Ya(Pk)Fj+Lj@j*:j-Nk4kD~Oa(Pj(PjYa(St4j))t)7aAu-5t48k0,j30k+P~((j7(k(Iu<+t*+a*1u4j,:~OaUu;a*[t(4j-)u(8jQb3j(+a(i.{*{p*e)gkqgiwgae"),
  "y_bar": /* @__PURE__ */ unpack(6, 3, ")s(u)cu)w(d8m+}EaQaF~*~(j9tYuAu4k-t(Hk(Mu8k(1t,Tk+;a)Au.Pk1Ut)=t7B~:@j,;a(Zj)Ua(+u(Ca)GuD~(L~(Ca4k(CaHk*?a*Eu(5u(WaUu))uAt(Pj+Tk,-u)Dj((jAu4k(5tPj=t*~(At(Ut7u0x>xBz.p-|+b)t)z(v|xtpnfbfa"),
  "z_bar": /* @__PURE__ */ unpack(5, 3, "RaBkKa/m(-yFx,Ii(Ba,Fk(-k<5~.ZhBd*/u,>q*Ic*Nx)?v+4b3*g)Re(Yw(MgR|(,b(.z))t4kKk*~Rr;|c|)r*~*j)~(j~(j(tk(u(~ul(ovrqbdbacbaaaaaaaaaaaaaaaaaaaaaaaa"),
};
