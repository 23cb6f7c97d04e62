import { measuredTransmittance, type Spectrum } from "@sunfathom/optics";
import type { TransmittanceSample } from "../scene/scene.js";

/** Transmittance of a filter that was measured, 0 to 1, on the model's grid. */
export const measuredCurve = (samples: readonly TransmittanceSample[]): Spectrum =>
  measuredTransmittance(
    samples.map((s) => s.wavelength_nm),
    samples.map((s) => s.transmittance),
  );
