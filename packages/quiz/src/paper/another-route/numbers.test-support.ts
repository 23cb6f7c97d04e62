/** The right number. */
import type { Given } from "../../item/item.js";
import { list, n } from "./asked.test-support.js";

/** ISO settings that cameras have, rising by thirds of a stop; written down here by hand. */
const ISO = [
  100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
  8000, 10000, 12800,
];
/** Of two that are as near, the lower one. */
const nearestIso = (wanted: number): number =>
  ISO.reduce((best, iso) => {
    const nearer = Math.abs(Math.log(best / wanted)) - Math.abs(Math.log(iso / wanted));
    return nearer > 1e-3 ? iso : best;
  });

export const RIGHT_NUMBER: Record<string, (given: Given) => number> = {
  percent_to_stops: (given) =>
    "left_percent" in given
      ? -Math.log2(n(given, "left_percent") / 100)
      : Math.log2(n(given, "green_percent")) - Math.log2(n(given, "red_percent")),
  density_to_stops: (given) => -Math.log2(list(given, "densities").reduce((left, d) => left * 10 ** -d, 1)),
  // Shares of light, through the filter where there is one.
  density_to_even_out: (given) => {
    const [green, red] = [2 ** -n(given, "green_stops"), 2 ** -n(given, "red_stops")];
    if (!("green_density" in given)) return Math.log10(green / red);
    const through = (light: number, density: number): number => light * 10 ** -density;
    return Math.log2(through(green, n(given, "green_density")) / through(red, n(given, "red_density")));
  },
  pay_with_iso: (given) =>
    nearestIso(
      n(given, "iso") / ("density" in given ? 10 ** -n(given, "density") : 0.5 ** n(given, "stops")),
    ),
  mired_shift: (given) =>
    "shift" in given
      ? 1 / (1 / n(given, "from_K") + n(given, "shift") * 1e-6)
      : 1e6 / n(given, "to_K") - 1e6 / n(given, "from_K"),
  lamp_falloff: (given) => {
    const water_m = (m: number) => n(given, "ways") * m;
    const light = (m: number) => 2 ** (-n(given, "per_metre_stops") * water_m(m)) / m ** 2;
    return Math.log2(light(n(given, "near_m")) / light(n(given, "far_m")));
  },
  lamp_path: (given) => {
    const left = (stops: number, m: number): number => 0.5 ** (stops * m);
    const both = (stops: number): number =>
      left(stops, n(given, "lamp_m")) * left(stops, n(given, "camera_m"));
    const red = both(n(given, "per_metre_stops"));
    return Math.log2(("green_stops" in given ? both(n(given, "green_stops")) : 1) / red);
  },
  // The thin-lens formula: the distance whose image lies behind the focus by as much as the sheet moves it.
  sheet_shift: (given) => {
    const [f, t] = [n(given, "focal_mm"), n(given, "thickness_mm")];
    const image_mm = f + t - t / n(given, "index");
    return 1e-3 / (1 / f - 1 / image_mm) - 1e-3 * f;
  },
};
