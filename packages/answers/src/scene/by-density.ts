import type { Scene as WireScene } from "@sunfathom/contract";

/** A stop is log10(2) of density. To a thousandth: a hundredth of a stop is more than anyone knows of a filter. */
const densityOf = (stops: number): number => Number((stops / Math.log2(10)).toFixed(3));

interface Strength {
  filter_density?: number | undefined;
  filter_stops?: number | undefined;
}

const strengthByDensity = <T extends Strength>(filter: T): T =>
  filter.filter_stops === undefined ? filter : { ...filter, filter_density: densityOf(filter.filter_stops) };

/** The same scene with filters by their density, whichever way they were given. */
export function byDensity(wire: WireScene): WireScene {
  const { kit } = wire;
  const isByStops = ({ filter_stops }: Strength): boolean => filter_stops !== undefined;
  const scene = strengthByDensity(wire);
  return kit?.some(isByStops) ? { ...scene, kit: kit.map(strengthByDensity) } : scene;
}
