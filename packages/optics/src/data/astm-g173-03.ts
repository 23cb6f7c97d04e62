// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Reference solar spectra, means over each cell of the 5 nm grid, W m^-2 nm^-1. Source: ASTM G173-03. */
export const ASTM_G173_03 = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "extraterrestrial_W_m2_nm": /* @__PURE__ */ unpack(7, 1, ",H1Uu(1X?j(./Fu(-,:j*4B;a:SCu(5<k3+?a/F,~+RV~(01Fj(979u-CZkIOOuI8Uu0::j-;Gu./6~)P>j.4Xk/<LkS,R~/VNk4V+a9@5t/A-a3QuF@Gt(D<k.ZKu;((k59Pj/)Et0W+u)YCt(K.j0W(j*LEu@7t,/Eu,KPj(OXk;:/t09Ma0,Lj)/Aa.UUt3W=t--Sa0>?t((Mt*[<j*C-t+@8j/JFj=Q+t7>YaYAu,B:j,V)t*DUt.KX~(ZBk-7Bj-Q,jE-t,2V~-F.j-)6j(BQa.?Jj6Hk1?P~*,Pk*WR~(3Mt*HLj,)2~+E:j(P8j)K0~"),
  "global_tilt37_W_m2_nm": /* @__PURE__ */ unpack(7, 1, "*=D0aIS0tOE=kI1Bt)1I-u8N[u,;Jk3U2k(T6~=GuO/Xj();7a/?>kCS+uDP/u*5Nj.=Gu(Z4~.Zk,P?u/TGuDW+t0XQu4C4k4P>~+ZGa+2Ou=O0j)<Qa-;(k6:Rk16Fj,4Gt/8.kXTjPQt04Fj(D.k,*Ct)(CuHMu.Q<kCF)t1XQaF*k,WBk)2:~/94~,=Aa31<~+QKt1W7a)G=u*6At28Kt6:Z~5MDk+YFk)MVk*3[t(TOt@I,~B2<~>8+u)0Qu+L<k(8Gu71PjV<Gt.61a(W<kDX)uA5u/+*k)W=tT>j)B3Uj)-Id)/BPe.AVk)4B~"),
  "direct_circumsolar_W_m2_nm": /* @__PURE__ */ unpack(7, 1, ")=K(u=SOjF;0k>B0j(JYNk6VPy-F7q38O{VXo)E4{E05bTL=g/M4k@AQuAFAaK,j//KaP~(X-u-F=a08Uu?42j0IAa3N+a1Q5t,A4k+@Ia:+@~)VCa-:1a57Pk/>9t+*T~.VGu6Fj+<~.A:~))Ya*S9t)79aV*k.4Sa@)Yt12+uQEu,FUu(PXj.8Zj,,@k1LX~+*Yt0O+a)>,k)SF~1(-t4T0j4>Oa+BMu)>7a)VUt(I@~=T5t?)?t;O.k(VBk+5Cu(1:k5;X~Q2On-Q0y(TXaB).uC3a.E3a)<2jCIt)65Uj(1Kj(Y7;a-YEa(R?t"),
};
