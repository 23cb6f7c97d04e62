import { metresPerFoot } from "../../numbers/lengths.js";
import type { QuizUnits, Show } from "../../quiz/show.js";
import { asGiven, grouped, percent, plural, shown, unit } from "../format.js";

/** Con ese número de decimales como máximo, sin ceros al final. */
const plain = (value: number, decimals: number): string => asGiven(Number(value.toFixed(decimals)));

/** Dos cifras significativas para partes pequeñas, porcentajes enteros por encima. */
const percentText = (value: number): string => {
  if (value >= 10) return percent(value);
  const text = String(Number(value.toPrecision(2)));
  return percent(Number(text), text.split(".")[1]?.length ?? 0);
};

/** Los números como los escribe el español: coma decimal, y el porcentaje y las unidades según el CLDR. */
export function showIn(units: QuizUnits): Show {
  const feet = (value: number, tenthsBelow_m = 4): string =>
    units === "metric" ? "" : ` (${unit(plain(value / metresPerFoot, value < tenthsBelow_m ? 1 : 0), "ft")})`;
  return {
    number: plain,
    fixed: (value, decimals) => shown(value, decimals),
    signed: (value, decimals) => `${value < 0 ? "-" : "+"}${shown(Math.abs(value), decimals)}`,
    m: (value) => `${unit(plain(value, 2), "m")}${feet(value)}`,
    m1: (value) => `${unit(shown(value, 1), "m")}${feet(value, 10)}`,
    mm: (value, decimals = 1) => unit(plain(value, decimals), "mm"),
    stops: (value, decimals = 1) =>
      `${plain(value, decimals)} ${plural(value, { one: "paso", other: "pasos" }, decimals)}`,
    percent: percentText,
    kelvin: (value) => `${shown(value)} K`,
    deg: (value, decimals = 0) => `${plain(value, decimals)}°`,
    lx: (value) =>
      `${value < 10 ? asGiven(Number(value.toPrecision(2))) : grouped(Number(value.toPrecision(2)))} lx`,
    iso: (value) => `ISO ${shown(value)}`,
    f: (value, least = 0) => `f/${value < 10 && least === 1 ? shown(value, 1) : plain(value, 1)}`,
    s: (value) => (value < 1 ? `1/${Math.round(1 / value)} s` : `${plain(value, 1)} s`),
    density: (value) => plain(value, 2),
  };
}
