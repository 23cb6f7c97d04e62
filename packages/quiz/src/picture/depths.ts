/** A picture of what is left of light over depth. */
import type { Picture } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { chartSvg, ticksTo } from "./chart.js";

const STEPS = 60;
const MOST_TICKS = 10;
const TICKS_PERCENT = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];
/** Told in the text alternative: every other tick, not the place that is asked for. */
const TOLD_EVERY = 2;

interface Asked {
  deepest_m: number;
  curves: readonly { name: string; left: (depth_m: number) => number }[];
}

/** @param left share left, 0 to 1, by depth. */
export function depthPicture({ deepest_m, curves }: Asked, say: Catalogue): Picture {
  const words = say.light.depthPicture;
  const ticks = ticksTo(deepest_m, MOST_TICKS);
  const to = ticks[ticks.length - 1] ?? deepest_m;
  const told = ticks.filter((_, i) => i > 0 && i % TOLD_EVERY === 1);
  const alt = words.alt({
    curves: curves.map(({ name, left }) => ({
      name,
      shares: told.map((m) => ({ m, percent: 100 * left(m) })),
    })),
  });
  const svg = chartSvg(
    {
      title: words.title,
      alt,
      x: { from: 0, to, ticks, label: words.xAxis },
      y: { from: 0, to: 100, ticks: TICKS_PERCENT, label: words.yAxis },
      curves: curves.map(({ name, left }) => ({
        name,
        points: Array.from({ length: STEPS + 1 }, (_, i) => {
          const depth_m = (i * to) / STEPS;
          return [depth_m, 100 * left(depth_m)] as const;
        }),
      })),
    },
    say,
  );
  return { svg, alt };
}
