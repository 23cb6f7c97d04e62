/** Numbers with their units, as sentences and options show them. */
import type { Units } from "../item/item.js";

const FEET_PER_M = 1 / 0.3048;

/** At most `decimals` decimals, without trailing zeros. */
export const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

export interface Show {
  /** A length in metres, with feet behind where asked for. */
  m(value: number): string;
  /** The same with one decimal always, for lengths that stand side by side. */
  m1(value: number): string;
  mm(value: number, decimals?: number): string;
  stops(value: number, decimals?: number): string;
  percent(value: number): string;
  kelvin(value: number): string;
  deg(value: number): string;
  /** Two significant digits. */
  lx(value: number): string;
  iso(value: number): string;
  /** `least` decimals below 10, as cameras show f/8.0 beside f/5.6. */
  f(value: number, least?: 0 | 1): string;
  /** Exposure time. */
  s(value: number): string;
  density(value: number): string;
}

/** Two significant digits for small shares, whole percents above. */
const percentText = (value: number): string =>
  value >= 10 ? value.toFixed(0) : String(Number(value.toPrecision(2)));

export function showIn(units: Units): Show {
  const feet = (value: number, tenthsBelow_m = 4): string =>
    units === "metric" ? "" : ` (${plain(value * FEET_PER_M, value < tenthsBelow_m ? 1 : 0)} ft)`;
  return {
    m: (value) => `${plain(value, 2)} m${feet(value)}`,
    m1: (value) => `${value.toFixed(1)} m${feet(value, 10)}`,
    mm: (value, decimals = 1) => `${plain(value, decimals)} mm`,
    stops: (value, decimals = 1) => {
      const text = plain(value, decimals);
      return `${text} ${text === "1" ? "stop" : "stops"}`;
    },
    percent: (value) => `${percentText(value)} %`,
    kelvin: (value) => `${value.toFixed(0)} K`,
    deg: (value) => `${value.toFixed(0)}°`,
    lx: (value) => `${Number(value.toPrecision(2))} lx`,
    iso: (value) => `ISO ${value.toFixed(0)}`,
    f: (value, least = 0) => `f/${value < 10 && least === 1 ? value.toFixed(1) : plain(value, 1)}`,
    s: (value) => (value < 1 ? `1/${Math.round(1 / value)} s` : `${plain(value, 1)} s`),
    density: (value) => plain(value, 2),
  };
}
