// Generated from the tables by scripts/write-table-modules.mjs; do not edit.
import { evenly, unpack } from "../spectrum/packed.js";

/** Reflectance of skin around the 10th, 50th and 90th percentile of brightness. Source: Cooksey, Allen & Tsai 2017, Journal of Research of NIST 122, 26. */
export const SKIN_REFLECTANCE = {
  "wavelength_nm": /* @__PURE__ */ evenly(380, 5, 81),
  "dark": /* @__PURE__ */ unpack(4, 3, "(6i*ejafbudgcusok(l(~jiegb(kixdfeldjk{qokjxh~{*y*e)x)r(n(ztmc(amgbulmdgaifh{)bqsbgdfldycnyq}xzr"),
  "middle": /* @__PURE__ */ unpack(4, 4, ")6}+k(djgyehpg(cixd+bx+kcwvk(o(j(vmubfbb(oaheh(fhgz)y+cv/pc(kmu(k(}(bbfjaabgddehc(a*~+ozvihu(n(go|i(av{(zlk"),
  "pale": /* @__PURE__ */ unpack(4, 3, ")Si+u(lnaw(emki(k)ckn+p*joquiq)au(lvhddbv{(as}op(dj(v(o,{+u,b+h)~z|g(ouugkdmbeecehd(g)v{scajirgqdciyud(tj"),
};
