import { type ChannelStops, fitFilter, WAVELENGTHS_NM } from "@sunfathom/optics";
import { sensorOf } from "../camera/sensor.js";
import { valueAt } from "../lists/non-empty.js";
import type { Camera, FilterKind, TransmittanceSample } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

export type { ChannelStops } from "@sunfathom/optics";

/** What a filter was found to be from the stops that it took of a grey card in daylight. */
export interface FittedFilter {
  filter_kind: FilterKind;
  filter_density: number;
  density_standard_error: number;
  residual_stops: number;
  /** Every 20 nm of what cameras see. */
  filter_transmittance: TransmittanceSample[];
}

const CURVE_NM = { from: 400, to: 700, step: 20 };

/** @param camera that saw the card */
export function fittedFilter(stops: ChannelStops, camera: Pick<Camera, "sensor_samples">): FittedFilter {
  const { kind, density, density_standard_error, residual_stops, transmittance } = fitFilter(
    stops,
    sensorOf(camera, NOMINAL),
  );
  const curve = Array.from(WAVELENGTHS_NM, (wavelength_nm, i) => ({
    wavelength_nm,
    transmittance: Number(valueAt(transmittance, i).toFixed(4)),
  })).filter(
    ({ wavelength_nm: nm }) =>
      nm >= CURVE_NM.from && nm <= CURVE_NM.to && (nm - CURVE_NM.from) % CURVE_NM.step === 0,
  );
  return {
    filter_kind: kind,
    filter_density: density,
    density_standard_error,
    residual_stops,
    filter_transmittance: curve,
  };
}
