/** Stops as a dial has them, in thirds: how many whole ones, and the fraction behind them. */
export interface Thirds {
  /** `2⅓`, `⅔`, `1`. */
  text: string;
  /** Whether it is one stop at most, which the noun follows. */
  one: boolean;
  /** Less than a third. */
  none: boolean;
}

export function thirdsOf(stops: number): Thirds {
  const thirds = Math.round(stops * 3);
  const whole = Math.floor(thirds / 3);
  return {
    text: `${whole > 0 ? whole : ""}${["", "⅓", "⅔"][thirds % 3]}`,
    one: thirds <= 3,
    none: thirds <= 0,
  };
}
