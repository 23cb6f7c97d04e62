// How well two sets of numbers agree, and how that is said.

const sorted = (values) => [...values].sort((a, b) => a - b);

export const median = (values) => {
  const s = sorted(values);
  const middle = Math.floor(s.length / 2);
  return s.length % 2 === 1 ? s[middle] : (s[middle - 1] + s[middle]) / 2;
};
export const rms = (values) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
export const trapezoid = (x, y) =>
  x.slice(1).reduce((sum, v, i) => sum + ((y[i] + y[i + 1]) / 2) * (v - x[i]), 0);

/** Four significant digits at most, without a trailing zero. */
export const number = (value, digits = 3) => String(Number(value.toPrecision(digits)));
/** A ratio as a signed difference in per cent. */
export const percent = (ratio) => {
  const off = 100 * (ratio - 1);
  const shown = Math.abs(off) >= 10 ? off.toFixed(0) : off.toFixed(Math.abs(off) >= 0.95 ? 1 : 2);
  return Number(shown) === 0
    ? Math.abs(off) < 1e-9
      ? "0 %"
      : "below 0.01 %"
    : `${off > 0 ? "+" : "−"}${shown.replace("-", "")} %`;
};

/**
 * @param {{ours: number, published: number, where: string}[]} pairs
 * @returns count, median size of the difference, and the pair that differs most (by ratio).
 */
export function deviation(pairs) {
  const ln = pairs.map(({ ours, published }) => Math.abs(Math.log(ours / published)));
  const worst = pairs[ln.indexOf(Math.max(...ln))];
  return {
    count: pairs.length,
    typical: Math.exp(median(ln)),
    largest: worst.ours / worst.published,
    where: worst.where,
  };
}

export const markdownTable = (head, rows) =>
  [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");

/** One table of deviations. @param {[string, {ours: number, published: number, where: string}[]][]} comparisons */
export const deviationTable = (comparisons) =>
  markdownTable(
    ["Compared", "Points", "Typical (median size)", "Largest (ours against published)", "Where"],
    comparisons.map(([name, pairs]) => {
      const { count, typical, largest, where } = deviation(pairs);
      return [
        name,
        count,
        percent(typical).replace("+", ""),
        percent(largest),
        Math.abs(largest - 1) < 1e-9 ? "nowhere" : where,
      ];
    }),
  );
