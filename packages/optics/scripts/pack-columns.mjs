// Writes columns of numbers as calls of src/spectrum/packed.ts: the shortest text from which each comes out to the last bit.

/** @param {number[]} values */
const isEven = (values) =>
  values.length > 2 && values.every((v, i) => v === values[0] + i * (values[1] - values[0]));

/** Decimals of the number with most of them. @param {number[]} values */
const decimalsOf = (values) =>
  Math.max(
    ...values.map((v) => {
      const [mantissa, exponent = "0"] = String(v).split("e");
      return Math.max(0, (mantissa.split(".")[1] ?? "").length - Number(exponent));
    }),
  );

/** @param {number[]} whole @param {number} order */
const differences = (whole, order) => {
  const out = [...whole];
  for (let round = 1; round <= order; round++) {
    for (let i = out.length - 1; i >= round; i--) out[i] -= out[i - 1];
  }
  return out;
};

/** A whole number as `unpack` reads it: the last character from `a` on, those before it from `(` on. @param {number} n */
const written = (n) => {
  const count = n >= 0 ? 2 * n : -2 * n - 1;
  let text = String.fromCharCode(97 + (count % 30));
  for (let rest = Math.floor(count / 30); rest > 0; rest = Math.floor((rest - 1) / 52))
    text = String.fromCharCode(40 + ((rest - 1) % 52)) + text;
  return text;
};

/** Beyond this order a column of rounded numbers only gets rougher. */
const HIGHEST_ORDER = 4;

/**
 * @param {(number | null)[]} column
 * @returns {string} an expression that gives it
 */
export function packed(column) {
  const values = column.filter((v) => v !== null);
  // With gaps it stays as it is.
  if (values.length < column.length) return JSON.stringify(column);
  if (isEven(values))
    return `/* @__PURE__ */ evenly(${values[0]}, ${values[1] - values[0]}, ${values.length})`;
  const decimals = decimalsOf(values);
  const whole = values.map((v) => Math.round(v * 10 ** decimals));
  const texts = Array.from({ length: HIGHEST_ORDER + 1 }, (_, order) =>
    differences(whole, order).map(written).join(""),
  );
  const order = texts.reduce((best, text, i) => (text.length < texts[best].length ? i : best), 0);
  return `/* @__PURE__ */ unpack(${decimals}, ${order}, "${texts[order]}")`;
}
