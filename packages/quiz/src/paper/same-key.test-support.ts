/** Whether a question's key is what another route finds. */
import { expect } from "vitest";
import type { Item } from "../item/item.js";
import * as first from "./another-route.test-support.js";
import * as dives from "./dive-route.test-support.js";
import * as further from "./further-route.test-support.js";

const RIGHT_CHOICE = { ...first.RIGHT_CHOICE, ...further.FURTHER_CHOICE, ...dives.DIVE_CHOICE };
const RIGHT_NUMBER = { ...first.RIGHT_NUMBER, ...further.FURTHER_NUMBER };
const RANK = { ...first.RANK, ...further.FURTHER_RANK, ...dives.DIVE_RANK };
const PARTNERS = { ...first.PARTNERS, ...further.FURTHER_PARTNERS };

/** @throws where a template has none: then its keys are not held to anything. */
function routeOf<Route>(routes: Readonly<Record<string, Route>>, template: string): Route {
  const route = routes[template];
  if (route === undefined) throw new Error(`No other route to ${template}.`);
  return route;
}

const ids = (list: { id: string }[]): string[] => list.map(({ id }) => id);

/** Exactly the right answers that another route finds, and no wrong one within the tolerance of a number. */
export function expectSameKey(item: Item): void {
  const { template, given } = item;
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice": {
      const right = item.options.filter((option) => routeOf(RIGHT_CHOICE, template)(option, given));
      expect(ids(right), `${template}: ${item.stem} ${JSON.stringify(item.options)}`).toEqual(
        ids(item.options.filter((o) => o.right)),
      );
      if (item.interaction === "single_choice") expect(right).toHaveLength(1);
      else expect(right.length).toBeGreaterThan(0);
      break;
    }
    case "numeric": {
      const value = routeOf(RIGHT_NUMBER, template)(given);
      expect(Number(value.toFixed(item.decimals)), item.stem).toBeCloseTo(item.value, item.decimals + 3);
      expect(value).toBeGreaterThan(item.accepted.low);
      expect(value).toBeLessThan(item.accepted.high);
      for (const wrong of item.anticipated)
        expect(wrong.high < item.accepted.low || wrong.low > item.accepted.high, item.stem).toBe(true);
      break;
    }
    case "ordering": {
      const ranks = item.right_order.map((id) =>
        routeOf(RANK, template)(item.entries.find((e) => e.id === id)?.text ?? "", given),
      );
      expect(ranks.length).toBe(item.entries.length);
      ranks.slice(1).forEach((rank, i) => {
        expect(rank, `${item.stem} ${JSON.stringify(item.entries)}`).toBeGreaterThan(ranks[i] ?? Number.NaN);
      });
      break;
    }
    case "matching": {
      const found = item.left.flatMap((l) =>
        item.right
          .filter((r) => routeOf(PARTNERS, template)(l.text, r.text))
          .map((r) => ({ left: l.id, right: r.id })),
      );
      expect(found).toEqual(item.pairs);
      break;
    }
  }
}
