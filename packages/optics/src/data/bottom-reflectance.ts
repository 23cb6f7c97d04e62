// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Irradiance reflectance of sea floors. Source: means of spectra by G. Asner and by Schnalzger 2017, as an open bio-optical library carries them (DOI 10.5281/zenodo.10246861). */
export const BOTTOM_REFLECTANCE = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "sand": /* @__PURE__ */ unpack(4, 3, ")*w+p(yb(p{(j(kfzrkwihvakolldgkqdfhcfeeeaedppbckiifrrfy}geme|)t)xj+c,q+c(m(~+d+t*p|(s)qqh(o(ks(b(z(du{bqm"),
  "coral": /* @__PURE__ */ unpack(4, 3, "Gka(b(o{(fejdkqejrdfkbmcdlaikefhdckkcifcix(b(jn(i)q(g(d)t(xw)k(ictcg(|)dk)y*y(ol*i,sw.b1t-le*}+g+s)u*b-n,~~)c*})k*ms"),
  "crustose_coralline_algae": /* @__PURE__ */ unpack(4, 4, ")?m2n(p,g*r+|z/{-v(oc(e(ov)vv(mq(k(hti(m}j(h(nni(m{den~x(c)e(}(h*|)nk)s(cko(akzzpz(t(d(g+u*o|)r)b(u)u(v-v*|r*m+i-})p)m,|*b(cs*}(vbc(l"),
  "macroalgae": /* @__PURE__ */ unpack(4, 3, "/},e(ts)b)y(m)l(ocigafpe~mkikjgdmitfpeiaicehhequazrnjdiuuqhdfl~ti(y(q{fm)a(u~*|*f*n)f){,c)c(u+d*b)h)okti*e"),
  "seagrass": /* @__PURE__ */ unpack(4, 4, "/onebbkjeefbgbcafaibdccbcgbdahlcmiefdlqeiblbacjkaibndc{ddvoidemsct)f(f}(upkufmheejdfa"),
};
