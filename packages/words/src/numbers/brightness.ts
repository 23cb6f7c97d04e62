/** How bright one thing is against another, as finely as such a guess is good for. */
export interface Brightness {
  /** Less than 1 %. */
  none: boolean;
  /** From 150 % up: how many times as bright. */
  times: boolean;
  /** Times, or percent: whole below 10 %, tens above. */
  count: number;
}

export function brightnessOf(percent: number): Brightness {
  const count =
    percent >= 150
      ? Math.round(percent / 100)
      : percent < 10
        ? Math.round(percent)
        : Math.round(percent / 10) * 10;
  return { none: count === 0, times: percent >= 150, count };
}
