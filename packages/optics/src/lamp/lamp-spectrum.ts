import { daylightOfCct } from "../colour/daylight-of-cct.js";
import { planckian } from "../colour/illuminants.js";
import { ledIlluminant } from "../colour/led-illuminants.js";
import { perLumen } from "../colour/per-lumen.js";
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

/** Phosphor-white LEDs of CIE 15:2018 with their correlated colour temperatures. */
const PHOSPHOR_LEDS = [
  { name: "LED-B1", cct_K: 2733 },
  { name: "LED-B2", cct_K: 2998 },
  { name: "LED-B3", cct_K: 4103 },
  { name: "LED-B4", cct_K: 5109 },
  { name: "LED-B5", cct_K: 6598 },
] as const;

/**
 * Spectrum of a white lamp known only by its colour temperature, per lumen.
 *
 * From 2733 to 6598 K a mix, linear in mired, of the two neighbouring phosphor LEDs of CIE 15:2018. Cooler-burning lamps
 * are taken as Planckian radiators and bluer ones as CIE daylight (4000 to 25 000 K).
 */
export function whiteLampPerLumen(cct_K: number): Spectrum {
  const first = PHOSPHOR_LEDS[0];
  const last = PHOSPHOR_LEDS[PHOSPHOR_LEDS.length - 1];
  if (cct_K < first.cct_K) return perLumen(planckian(cct_K));
  if (cct_K > last.cct_K) return perLumen(daylightOfCct(cct_K));
  const upper = PHOSPHOR_LEDS.findIndex((led) => led.cct_K >= cct_K);
  const b = PHOSPHOR_LEDS[Math.max(1, upper)];
  const a = PHOSPHOR_LEDS[Math.max(1, upper) - 1];
  const share = (1 / a.cct_K - 1 / cct_K) / (1 / a.cct_K - 1 / b.cct_K);
  const warm = perLumen(ledIlluminant(a.name));
  const cool = perLumen(ledIlluminant(b.name));
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) out[i] = (1 - share) * warm[i] + share * cool[i];
  return out;
}
