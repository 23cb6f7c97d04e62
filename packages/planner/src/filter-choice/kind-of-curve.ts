import {
  FILTER_KINDS,
  type FilterKind,
  filterTransmittance,
  type Spectrum,
  WAVELENGTHS_NM,
} from "@sunfathom/optics";
import { measuredCurve } from "../light/measured-curve.js";
import { valueAt } from "../lists/non-empty.js";
import type { TransmittanceSample } from "../scene/scene.js";

/** From the weakest to the densest filter that has a kind and a density. */
const STEP = 0.05;
const STEPS = 60;
/** What dyes let through beyond, the eye does not see. */
const TO_nm = 700;

/** Nominal curves of each kind from weak to dense. */
let nominal: { kind: FilterKind; curve: Spectrum }[] | undefined;

const nominalCurves = () =>
  FILTER_KINDS.flatMap((kind) =>
    Array.from({ length: STEPS }, (_, i) => ({ kind, curve: filterTransmittance(kind, (i + 1) * STEP) })),
  );

/** Sum of squared differences. */
function distance(a: Spectrum, b: Spectrum): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) {
    if (valueAt(WAVELENGTHS_NM, i) <= TO_nm) sum += (valueAt(a, i) - valueAt(b, i)) ** 2;
  }
  return sum;
}

/** What to call a filter that is known by its curve alone: the kind of the nominal curve, of whatever density, that lies nearest. */
export function kindOfCurve(samples: readonly TransmittanceSample[]): FilterKind {
  const measured = measuredCurve(samples);
  nominal ??= nominalCurves();
  const distances = nominal.map(({ kind, curve }) => ({ kind, off: distance(measured, curve) }));
  return distances.reduce((nearest, next) => (next.off < nearest.off ? next : nearest)).kind;
}
