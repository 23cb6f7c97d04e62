import type { ResolvedScene, Scene as WireScene } from "@sunfathom/contract";
import { type ChannelStops, type FittedFilter, fittedFilter } from "@sunfathom/planner";

type Samples = NonNullable<WireScene["filter_samples"]>;
type Fits = NonNullable<ResolvedScene["filter_fits"]>;
type Resolved = WireScene & { filter_fits?: Fits };

/** Stops that a card lost per channel, the mean of all pairs. */
function measuredStops(samples: Samples): ChannelStops {
  const mean = (of: (sample: Samples[number]) => number): number =>
    samples.reduce((sum, sample) => sum + Math.log2(of(sample)), 0) / samples.length;
  return [
    mean((s) => s.red_without / s.red_with),
    mean((s) => s.green_without / s.green_with),
    mean((s) => s.blue_without / s.blue_with),
  ];
}

interface Sampled {
  id: string | undefined;
  stops: ChannelStops;
  fit: FittedFilter;
}

const sampled = (
  id: string | undefined,
  samples: Samples,
  { sensor_samples }: Pick<WireScene, "sensor_samples">,
): Sampled => {
  const stops = measuredStops(samples);
  return { id, stops, fit: fittedFilter(stops, sensor_samples === undefined ? {} : { sensor_samples }) };
};

function told({ id, stops, fit }: Sampled, all: readonly Sampled[]): Fits[number] {
  const differ = (other: Sampled): number =>
    Math.max(...stops.map((s, k) => Math.abs(s - (other.stops[k] ?? s))));
  return {
    ...(id === undefined ? {} : { id }),
    ...fit,
    matches: all.flatMap((other) =>
      other.id === undefined || other.id === id ? [] : [{ id: other.id, differ_stops: differ(other) }],
    ),
  };
}

/** A scene in which filters were sampled, with those by the kind and density that they were found to be, and how well. */
export function bySamples(wire: WireScene): Resolved {
  const lens = wire.filter_samples && sampled(undefined, wire.filter_samples, wire);
  const owned = (wire.kit ?? []).map(
    ({ id, filter_samples }) => filter_samples && sampled(id, filter_samples, wire),
  );
  const all = [lens, ...owned].filter((one) => one !== undefined);
  const found = ({ fit }: Sampled) => ({
    filter_kind: fit.filter_kind,
    filter_density: fit.filter_density,
  });
  return {
    ...wire,
    ...(lens ? found(lens) : {}),
    ...(wire.kit
      ? {
          kit: wire.kit.map((item, index) => {
            const one = owned[index];
            return one ? { ...item, ...found(one) } : item;
          }),
        }
      : {}),
    filter_fits: all.map((one) => told(one, all)),
  };
}
