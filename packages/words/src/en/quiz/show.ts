import { metresPerFoot } from "../../numbers/lengths.js";
import type { QuizUnits, Show } from "../../quiz/show.js";

/** At most `decimals` decimals, without trailing zeros. */
const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

/** Two significant digits for small shares, whole percents above. */
const percentText = (value: number): string =>
  value >= 10 ? value.toFixed(0) : String(Number(value.toPrecision(2)));

/** Numbers as English shows them. */
export function showIn(units: QuizUnits): Show {
  const feet = (value: number, tenthsBelow_m = 4): string =>
    units === "metric" ? "" : ` (${plain(value / metresPerFoot, value < tenthsBelow_m ? 1 : 0)} ft)`;
  return {
    number: plain,
    fixed: (value, decimals) => value.toFixed(decimals),
    signed: (value, decimals) => `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(decimals)}`,
    m: (value) => `${plain(value, 2)} m${feet(value)}`,
    m1: (value) => `${value.toFixed(1)} m${feet(value, 10)}`,
    mm: (value, decimals = 1) => `${plain(value, decimals)} mm`,
    stops: (value, decimals = 1) => {
      const text = plain(value, decimals);
      return `${text} ${Number(text) <= 1 && Number(text) > 0 ? "stop" : "stops"}`;
    },
    percent: (value) => `${percentText(value)} %`,
    kelvin: (value) => `${value.toFixed(0)} K`,
    deg: (value, decimals = 0) => `${plain(value, decimals)}°`,
    lx: (value) => `${Number(value.toPrecision(2))} lx`,
    iso: (value) => `ISO ${value.toFixed(0)}`,
    f: (value, least = 0) => `f/${value < 10 && least === 1 ? value.toFixed(1) : plain(value, 1)}`,
    s: (value) => (value < 1 ? `1/${Math.round(1 / value)} s` : `${plain(value, 1)} s`),
    density: (value) => plain(value, 2),
  };
}
