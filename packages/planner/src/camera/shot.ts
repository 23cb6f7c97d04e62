import {
  FIRST_NM,
  integrateProduct,
  multiply,
  type Sensor,
  type Spectrum,
  STEP_NM,
  spectrumFrom,
} from "@sunfathom/optics";
import type { Stage } from "../light/stage.js";
import type { Balance } from "./balance-reach.js";
import { balanceOf } from "./balance-setting.js";
import type { CameraState } from "./camera-state.js";
import { type ExposureLimits, settingsFor } from "./exposure-settings.js";
import { perPlace, type Vector3 } from "./matrix.js";
import { fillingSensitivity, type Recorder } from "./recording.js";
import { rawOf } from "./sensor-profile.js";

/** Reflectance of the white card, which fills the scale. */
const CARD_REFLECTANCE = 0.9;
/** Of the grey card, and level on the scale at which it is exposed right. */
export const GREY_REFLECTANCE = 0.18;
const AT_600_NM = (600 - FIRST_NM) / STEP_NM;
/** The cell at the bound counts half, as the trapezoid rule has it. */
const ABOVE_600_NM = spectrumFrom((_, i) => (i > AT_600_NM ? 1 : i === AT_600_NM ? 0.5 : 0));

/** What a meter behind the balance makes of its channels: the weights of ITU-R BT.709. */
const luma = ([r, g, b]: Vector3): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** How a picture is exposed. */
export type Exposure = Pick<Recorder, "settings" | "neutral_stops">;

/** A camera balanced and exposed for a stage behind a filter. */
export interface Shot {
  /** Light of a perfect white subject at the sensor, W m^-2 nm^-1. */
  subject: Spectrum;
  /** Raw response to it, and to the haze over it. */
  direct: Vector3;
  haze: Vector3;
  balance: Balance;
  recorder: Recorder;
}

/**
 * Balances as the camera does, and exposes as it meters, as far as the limits allow. What is too much light at the least sensitive
 * settings is left to neutral density in front of the lens. A given exposure is kept as it is.
 */
export function takeShot(stage: Stage, filter: Spectrum, camera: CameraState, given?: Exposure): Shot {
  const { profile, reach, limits, bits, curve, pixels, fullWellScale } = camera;
  const subject = multiply(stage.subject, filter);
  const haze: Vector3 = stage.background
    ? rawOf(profile, multiply(stage.background.veil, filter))
    : [0, 0, 0];
  const direct = rawOf(profile, subject);
  const whole = () => rawOf(profile, multiply(stage.whole(), filter));
  const card: Vector3 = [direct[0] + haze[0], direct[1] + haze[1], direct[2] + haze[2]];
  const balance = balanceOf(camera.balance, reach, card, whole);
  const { gains } = balance;
  const { settings, neutral_stops } = given ?? exposureFor(metered(), limits);
  return {
    subject,
    direct,
    haze,
    balance,
    recorder: { settings, neutral_stops, gains, bits, curve, pixels, fullWellScale },
  };

  function metered(): number {
    if (camera.metering === "white_card")
      return fillingSensitivity(
        Math.max(...perPlace((k) => (CARD_REFLECTANCE * direct[k] + haze[k]) * gains[k])),
      );
    const grey =
      camera.metering === "picture" ? whole() : perPlace((k) => GREY_REFLECTANCE * direct[k] + haze[k]);
    return GREY_REFLECTANCE * fillingSensitivity(luma(perPlace((k) => grey[k] * gains[k])));
  }
}

function exposureFor(sensitivity: number, limits: ExposureLimits): Exposure {
  const settings = settingsFor(sensitivity, limits);
  return { settings, neutral_stops: Math.max(0, settings.off_by_stops) };
}

/** Share of the red channel's signal that comes from above 600 nm, 0 to 1. */
export function redShareAbove600(sensor: Sensor, light: Spectrum): number {
  return integrateProduct(multiply(light, ABOVE_600_NM), sensor.red) / integrateProduct(light, sensor.red);
}
