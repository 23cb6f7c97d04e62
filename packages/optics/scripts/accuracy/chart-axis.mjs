import { scaleLinear, scaleLog } from "d3-scale";

/** To a tenth of a pixel: finer digits would only differ between engines. */
export const coordinate = (value) => Math.round(value * 10) / 10;

export const escapeText = (text) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** Generous guess at the width of sans-serif text, px. */
export const textWidth = (text, size = 12) => text.length * size * 0.58;

/**
 * @param {{domain: [number, number], ticks: number[], log?: boolean, format?: (tick: number) => string}} axis
 * @param {[number, number]} range px
 */
export function axisOf({ domain, ticks, log = false, format = String }, range) {
  const scale = (log ? scaleLog() : scaleLinear()).domain(domain).range(range);
  return {
    /** Position in px. */
    at: (value) => coordinate(scale(value)),
    holds: (value) => value >= Math.min(...domain) && value <= Math.max(...domain),
    hold: (value) => Math.min(Math.max(...domain), Math.max(Math.min(...domain), value)),
    ticks: ticks.map((tick) => ({ at: coordinate(scale(tick)), text: format(tick) })),
  };
}
