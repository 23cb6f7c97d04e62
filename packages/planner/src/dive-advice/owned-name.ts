import type { NamedFilter } from "../codes/named-filter.js";
import { named } from "../filter-choice/candidates.js";
import { kindOfItem } from "../filter-choice/kind-of-item.js";
import type { KitItem } from "../scene/scene.js";

/** What to call a filter from the kit by. */
export function ownedName(item: KitItem): NamedFilter {
  const { id, filter_density: density } = item;
  return named({ kind: kindOfItem(item), id, ...(density === undefined ? {} : { density }) });
}
