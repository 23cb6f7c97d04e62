// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { unpack } from "../spectrum/packed.js";

/** Extraterrestrial irradiance and gas absorption bands of the clear-sky model, all 122: for tests, too long to be sent. Source: Bird & Riordan 1986, SERI/TR-215-2436. */
export const BIRD_RIORDAN_1986_WHOLE = {
  "wavelength_nm": /* @__PURE__ */ unpack(1, 2, "*Sa*kaaaaaaaaa*kaaaaaaaaaaaaaaaaaaa-u)a*~)a+a0r.g(r.~(b-e)b+~aa,a,a)t,pco.ua*k0~a*j(k)u+a(j~=a1~a-t-t*ku+t5a-u-t-t-ua1a(u9j*t*u)a)tau*~)u(k)t1u;a(jaa4j0~*j-ua*k/u(k5u3aaAtHkaaaaaaaaaaaaaa"),
  "extraterrestrial_W_m2_nm": /* @__PURE__ */ unpack(4, 1, "-Ti5}QoVe5}(Aq(Ia:~;z.eQyi(Sa1vUt,K{)SeAc(Yd*1q)/a@kLjAu(Jj/u3a(2~Oa+u*~ItV~AtUt(Lj+u(<~4~7ttX~:j6~5t2~5t>jL~:j6~1t6pIjJ~7t@tm1z9b3lz-hUjFr=~4p1n+b4h.f<f7b>f(x6n7|<t;|-t-x+r,b2p)h/p/h(|j,x0p:x4d8v,z/nq.f)~.j*l-t,f+f)~0pt-r(j*b)r)f(x(t(l(f(b|xvrr"),
  "water_vapour": /* @__PURE__ */ unpack(5, 0, "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa0Gaaaaa))u(Fk+=Oa-/Au.Qu,kucc+a+Ga*X-u-/Au(3,k:Tkc8k84=u38(k38(k(5DCa)FF5u)-X3a0SQu*HMu3Quc-u.U4k,>BEu*7E9u*CV;a?I)u38(k+W<k4k4k3Qu0SQu0@,(kV<@-u/O,Xk*P3<k*P3<kDE?a;Au4k*kucu-u(5u+Ga)L(k-/AIuV<@-u>KMDk+MCAu0SQu..Pk)?1uZ5uC1uG)uQ7a(3,k0SQu*P3<k5K6Eu4J13Wa;*+GQu.66T(kEQD8k2:L3a1V*0k+MCAu,JSGaW*[a/TCa.H=u-/Au*>@k<PkEa"),
  "ozone": /* @__PURE__ */ unpack(3, 2, "3Qu-It*YuYa((k/u4k0a*k}skoaaaaaaagaaeeecdofd(u)le)bkwr{oacacaahkaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"),
  "mixed_gas": /* @__PURE__ */ unpack(5, 0, "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa:3aaaaaaa0SQuSTkaaaaaaaaaaaaaaaaaaaaaaaaaa-<kM?a)Dk(kwc-<k(<kHk+aaHk7Iu,-u.Ka7Iu-u0kuccu-u1F5u@HkZO7a7Iu)?1u14k-u)q-u*k(a}+m+MCAu.,QOa7Iu(2k-u(YDk+JEu*1Iu0Ga(5u4aAuL0k*1u"),
};
