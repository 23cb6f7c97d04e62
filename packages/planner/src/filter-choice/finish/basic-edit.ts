/**
 * What most people do to a picture afterwards: black level, exposure, balance and saturation, one slider each, on the picture as the
 * camera stored it. They are set as on a card: greys grey and as light as they are, then colours as strong as they should be.
 */
import { apply, perPlace, type Vector3 } from "../../camera/matrix.js";
import {
  clipped,
  held,
  LUMINANCE,
  luminanceOf,
  type PictureMatrix,
  pictureOfXyz,
  xyzOfPicture,
} from "../../camera/picture.js";
import type { Finished, Seen } from "./seen.js";
import { visibility } from "./visibility.js";

/** How far the sliders go: three stops either way, and twice the saturation. From memory of common editors. */
const MOST_GAIN = 8;
const MOST_SATURATION = 2;

interface Target {
  wanted: Vector3;
  stored: Vector3;
  variance: Vector3;
  weight: number;
}

const between = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The level that is black: where a line through the greys, stored against true luminance, meets nothing; 0 at least. */
function blackLevel(greys: readonly Target[]): number {
  let [sum, x, y, xx, xy] = [0, 0, 0, 0, 0];
  for (const { wanted, stored, weight } of greys) {
    const [level, meant] = [luminanceOf(stored), luminanceOf(wanted)];
    sum += weight;
    x += weight * level;
    y += weight * meant;
    xx += weight * level * level;
    xy += weight * level * meant;
  }
  const slope = (sum * xy - x * y) / (sum * xx - x * x);
  const black = slope > 0 ? (x - y / slope) / sum : 0;
  return Math.max(0, Math.min(black, ...greys.map(({ stored }) => luminanceOf(stored))));
}

/** Exposure and balance together: what each channel of the greys is multiplied by. */
const gainsFor = (greys: readonly Target[], black: number): Vector3 =>
  perPlace((k) => {
    let [square, cross] = [0, 0];
    for (const { wanted, stored, variance, weight } of greys) {
      const above = stored[k] - black;
      square += weight * (above * above + variance[k]);
      cross += weight * above * wanted[k];
    }
    return between(square > 0 ? cross / square : MOST_GAIN, 1 / MOST_GAIN, MOST_GAIN);
  });

const balanced = ([r, g, b]: Vector3, black: number, gains: Vector3): Vector3 => [
  gains[0] * (r - black),
  gains[1] * (g - black),
  gains[2] * (b - black),
];

/** How far colours are moved from grey, or towards it. */
function saturationFor(targets: readonly Target[], black: number, gains: Vector3): number {
  let [square, cross] = [0, 0];
  for (const { wanted, stored, variance, weight } of targets) {
    const v = balanced(stored, black, gains);
    const grey = luminanceOf(v);
    for (const k of [0, 1, 2] as const) {
      const colour = v[k] - grey;
      square += weight * (colour * colour + gains[k] ** 2 * variance[k]);
      cross += weight * colour * (wanted[k] - grey);
    }
  }
  return between(square > 0 ? cross / square : 1, 0, MOST_SATURATION);
}

/** Where the sliders are: a level that is taken for black, what each channel is multiplied by, and how far colours move from grey. */
export interface BasicEdit {
  black: number;
  gains: Vector3;
  saturation: number;
}

/** @param greys those of the chart, among what is seen */
export function fitBasicEdit(
  seen: readonly Seen[],
  greys: readonly Seen[],
  { fromRaw }: PictureMatrix,
): BasicEdit {
  const targetOf = ({ wantedXyz, from, variance, weight }: Seen): Target => ({
    wanted: pictureOfXyz(wantedXyz),
    stored: clipped(apply(fromRaw, from)),
    variance: perPlace((k) => {
      const [red, green, blue] = fromRaw[k];
      return red * red * variance[0] + green * green * variance[1] + blue * blue * variance[2];
    }),
    weight: weight * visibility(wantedXyz[1]),
  });
  const greyTargets = greys.map(targetOf);
  const black = blackLevel(greyTargets);
  const gains = gainsFor(greyTargets, black);
  return { black, gains, saturation: saturationFor(seen.map(targetOf), black, gains) };
}

/** @param greys those of the chart, among what is seen */
export function basicEdit(seen: readonly Seen[], greys: readonly Seen[], matrix: PictureMatrix): Finished {
  const { black, gains, saturation } = fitBasicEdit(seen, greys, matrix);
  const { fromRaw } = matrix;
  const [[rr, rg, rb], [gr, gg, gb], [br, bg, bb]] = fromRaw;
  const [gainR, gainG, gainB] = gains;
  const [lumaR, lumaG, lumaB] = LUMINANCE;
  // Spelled out: it is asked very often.
  return (red, green, blue) => {
    const r = gainR * (held(rr * red + rg * green + rb * blue) - black);
    const g = gainG * (held(gr * red + gg * green + gb * blue) - black);
    const b = gainB * (held(br * red + bg * green + bb * blue) - black);
    const rest = (1 - saturation) * (lumaR * r + lumaG * g + lumaB * b);
    return xyzOfPicture(rest + saturation * r, rest + saturation * g, rest + saturation * b);
  };
}
