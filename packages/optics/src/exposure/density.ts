/** Density, stops, filter factor and transmittance: exact by definition (ISO 5-2; a stop is a factor of two). */
export const STOPS_PER_DENSITY = Math.log2(10);

export const densityToStops = (density: number): number => density * STOPS_PER_DENSITY;
export const stopsToDensity = (stops: number): number => stops / STOPS_PER_DENSITY;
export const densityToFactor = (density: number): number => 10 ** density;
export const factorToDensity = (factor: number): number => Math.log10(factor);
export const densityToTransmittance = (density: number): number => 10 ** -density;

/** Loss from a reference to what is left, in stops. */
export const lossStops = (reference: number, left: number): number => Math.log2(reference / left);
