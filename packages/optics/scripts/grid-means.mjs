// Finely sampled columns brought onto the model's grid.

export const GRID = { from: 380, to: 780, step: 5 };

/** Mean of a finely sampled column over each grid cell, by trapezoid on the table's own points. */
export const cellMeans = (rows, key) => {
  const x = rows.map((row) => Number(row.wavelength_nm));
  const y = rows.map((row) => Number(row[key]));
  const at = (nm) => {
    const i = Math.max(
      1,
      x.findIndex((v) => v >= nm),
    );
    return y[i - 1] + ((y[i] - y[i - 1]) * (nm - x[i - 1])) / (x[i] - x[i - 1]);
  };
  const out = [];
  for (let nm = GRID.from; nm <= GRID.to; nm += GRID.step) {
    const lo = nm - GRID.step / 2;
    const hi = nm + GRID.step / 2;
    const xs = [lo, ...x.filter((v) => v > lo && v < hi), hi];
    let area = 0;
    for (let i = 1; i < xs.length; i++) area += ((at(xs[i - 1]) + at(xs[i])) / 2) * (xs[i] - xs[i - 1]);
    out.push(Number((area / GRID.step).toPrecision(7)));
  }
  return out;
};
export const gridNm = () =>
  Array.from({ length: (GRID.to - GRID.from) / GRID.step + 1 }, (_, i) => GRID.from + i * GRID.step);
