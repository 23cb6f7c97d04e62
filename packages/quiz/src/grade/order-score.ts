/**
 * What an order earns: pairs of entries in their right order less those turned round, over all pairs, and nothing below 0
 * (Kendall's tau, cut off at 0).
 */
export function orderScore(right: readonly string[], order: readonly string[]): number {
  const place = new Map(order.map((id, i) => [id, i]));
  let kept = 0;
  let turned = 0;
  right.forEach((first, i) => {
    for (const second of right.slice(i + 1)) {
      if ((place.get(first) ?? 0) < (place.get(second) ?? 0)) kept++;
      else turned++;
    }
  });
  return Math.max(0, (kept - turned) / (kept + turned));
}

/** Every order of some entries. */
export function ordersOf(ids: readonly string[]): string[][] {
  if (ids.length < 2) return [[...ids]];
  return ids.flatMap((id, i) =>
    ordersOf([...ids.slice(0, i), ...ids.slice(i + 1)]).map((rest) => [id, ...rest]),
  );
}
