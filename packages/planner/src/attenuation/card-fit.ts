import type { CardFit } from "@sunfathom/optics";
import { mapBoth } from "../lists/non-empty.js";
import type { CardFitFigures } from "../result/attenuation.js";
import type { Scene } from "../scene/scene.js";

const stops = (ln: number): number => ln / Math.LN2;

/** The fit of a scene's card samples as the answer gives it. */
export function cardFitFigures(fit: CardFit, { card_samples = [] }: Scene): CardFitFigures {
  const { channel_kd, channel_kd_difference, residuals_ln, rms_residual_ln } = fit;
  const { red_minus_green, blue_minus_green } = channel_kd_difference;
  return {
    ...(channel_kd
      ? {
          red_kd_per_m: channel_kd.red.value_per_m,
          red_kd_standard_error_per_m: channel_kd.red.standard_error_per_m,
          green_kd_per_m: channel_kd.green.value_per_m,
          green_kd_standard_error_per_m: channel_kd.green.standard_error_per_m,
          blue_kd_per_m: channel_kd.blue.value_per_m,
          blue_kd_standard_error_per_m: channel_kd.blue.standard_error_per_m,
        }
      : {}),
    red_minus_green_kd_per_m: red_minus_green.value_per_m,
    red_minus_green_kd_standard_error_per_m: red_minus_green.standard_error_per_m,
    blue_minus_green_kd_per_m: blue_minus_green.value_per_m,
    blue_minus_green_kd_standard_error_per_m: blue_minus_green.standard_error_per_m,
    rms_residual_stops: stops(rms_residual_ln),
    residuals: mapBoth(card_samples, residuals_ln, ({ depth_m }, [red, green, blue]) => ({
      depth_m,
      red_stops: stops(red),
      green_stops: stops(green),
      blue_stops: stops(blue),
    })),
  };
}
