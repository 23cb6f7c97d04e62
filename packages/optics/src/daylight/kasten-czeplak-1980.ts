/**
 * Share of the clear-sky irradiance that is left under cloud: 1 - 0.75 (N/8)^3.4, N in oktas.
 *
 * Hourly means with a scatter of about 30 %; sun above 10 degrees. Taken as spectrally grey, which shifts blue against red
 * by up to about 10 %.
 * Source: Kasten & Czeplak 1980, Solar and terrestrial radiation dependent on the amount and type of cloud, Solar Energy 24, 177.
 */
export function cloudTransmittance(cloud_oktas: number): number {
  return 1 - 0.75 * (cloud_oktas / 8) ** 3.4;
}

/** Clear-sky global irradiance of the same authors, W/m^2: 910 sin(h) - 30. For checks. */
export function kastenCzeplakClearSky_W_m2(sunElevation_deg: number): number {
  return 910 * Math.sin((sunElevation_deg * Math.PI) / 180) - 30;
}
