// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Measured absorption a and scattering b per optical water type, 1/m. Source: Williamson & Hollins 2022, Applied Optics 61, 9951. */
export const WILLIAMSON_HOLLINS_2022 = {
  "IA": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(v(q)a*tm"),
      "value_per_m": /* @__PURE__ */ unpack(4, 1, "/g.m-v:c6y)ZiE}(>q"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 8),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(v(q)a*tm"),
      "value_per_m": /* @__PURE__ */ unpack(4, 1, "(Ak.z*o1h+z2p)mj"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 8),
    },
  },
  "IB": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm"),
      "value_per_m": /* @__PURE__ */ unpack(7, 2, "1JTq4>~*3)z/L,c)>Ol73n(([IaSWSt7[Ga"),
      "std_dev_per_m": /* @__PURE__ */ unpack(9, 0, "0,:-u,61Au*UZIu)@+Qa(>14k(O0DkA;Yu>C4m9?[g"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "mmmmemiii"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "*?Ya.Y~)Pq4?pZ-jQ*y1Dn/Yu@7t"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "2HIo)*0h7Ls(3-f*4Z|+3,m,U7v(ZKk)Gt"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "mmmmemeii"),
    },
  },
  "II": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "8CIg(92r+L5p*F?y+6.q;2t(*/R}3Z(kB;Jk)K;7a"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 1, "(+-(k2.*jJ7a>.7~/>*a0;)n5=(n?+N};J?nPM<y"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")eegf(f(g|yb(z"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, ",)Gg3>r)9o3>r66a:Nv=Gb*9h>L|23b"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "4PF{AUn?,l<OcN3yWZtW(}(IN|()Hs*V*v"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")iebc(j(k(z(sa(|"),
    },
  },
  "III": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "FB)a*>9t.U9fSM{(A0q/Qx()1>}44FkD(5u)C2Ua"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, ".K[aFFx(=GlQNx(PGr)+7oVYdD2o;;fCJu"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ",eeaa*d*e)j(}a(l"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, ".UM}5P~9Xe:Qz(3:h(0Mq,UkYU|BQz.Kj"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, "DJYu9;t*FAu)UTj-PHv,[Xc+3@j(IQu)X,p(U2d"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ",ceno)~*a)n)ab(h"),
    },
  },
  "1C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(7, 1, "S9/u,4Dj3(8~(-X~)?a(CBt(()Pa3O@kH-9u);.Wu"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 0, "(SXIu(F.EuYH)uNX?uBCMaF3Uu9RQiASEaKLJka"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")eebb~(c(d(aap"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "2;DmJ*n5Us2Ln(7Np(D.wL9k(E;|MW|(JPq"),
      "std_dev_per_m": /* @__PURE__ */ unpack(6, 1, "*UAm78v*Zt(X|;Ef<;}(?Df(09}4*b3Lj"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")ecbc(b(c(f(cap"),
    },
  },
  "3C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, ",P1c,7v(WCx7XtW~@Lx,*@e(52}*O8m2L=y"),
      "std_dev_per_m": /* @__PURE__ */ unpack(8, 0, ")64Gu(S*Qa(9N/a(*B:kJ-@kO.3u<92gDKMa((V;ua"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")acea(l(mxyaj"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "79?{J6b.FkGZo)BTe)8Qf(<AfRUi(DPx(1Ta"),
      "std_dev_per_m": /* @__PURE__ */ unpack(6, 1, "+UIc0+i,*~3@r([Gl(Y[q-XlLUz9n@=|"),
      "campaigns": /* @__PURE__ */ unpack(0, 1, ")cgbc(p(qxwcj"),
    },
  },
  "5C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 1, "1NDg)K>z)QEhDQz?7z8?x0B-c*H6n*<>{2E[k"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 0, "R+:k@GUa6[8a3K(o1HUy//C{(0V?a.=Du6IUma"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "qooomogoom"),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac*o*tm{"),
      "value_per_m": /* @__PURE__ */ unpack(5, 1, ")L@}*[b<4i*Tg=3r<Zw<An8Kc<7t:,u"),
      "std_dev_per_m": /* @__PURE__ */ unpack(7, 1, ")*<?a=H~CPLk(=QJ~(.2Mu(0:0j((1.b)9W8c<K1tRFAt"),
      "campaigns": /* @__PURE__ */ unpack(0, 0, "ooqomogqoo"),
    },
  },
  "7C": {
    "a": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac+y+r{"),
      "value_per_m": /* @__PURE__ */ unpack(6, 2, ";29u+6Bd(AN|+>6c6Ig-+a+=[oXWl0>Ti"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 9),
    },
    "b": {
      "wavelength_nm": /* @__PURE__ */ unpack(0, 2, "Bo({(k(vac+y+r{"),
      "value_per_m": /* @__PURE__ */ unpack(5, 1, "/:Py1}0)e)3o(+mz,Sf*3n(Om"),
      "std_dev_per_m": [null,null,null,null,null,null,null,null,null],
      "campaigns": /* @__PURE__ */ evenly(1, 0, 9),
    },
  },
};
