/**
 * The picture that a camera makes by itself: balanced raw values to red, green and blue of ITU-R BT.709 by one matrix, fitted once
 * to the chart under D65, clipped where the picture can hold no more. What is grey after balance stays grey, as makers see to.
 */
import { WHITE_D65 } from "./d65.js";
import { apply, invert, type Matrix3, multiplyMatrices, perPlace, type Vector3 } from "./matrix.js";
import { rememberFor } from "./remember.js";
import type { SensorProfile } from "./sensor-profile.js";

/** What a picture holds of one channel. */
export const held = (value: number): number => Math.min(1, Math.max(0, value));

/** Chromaticities of the primaries of ITU-R BT.709. */
const PRIMARIES = [
  [0.64, 0.33],
  [0.3, 0.6],
  [0.15, 0.06],
] as const;

function xyzFromPicture(): Matrix3 {
  const columns = perPlace((k): Vector3 => {
    const [x, y] = PRIMARIES[k];
    return [x / y, 1, (1 - x - y) / y];
  });
  const unscaled = perPlace((row): Vector3 => perPlace((k) => columns[k][row]));
  const scale = apply(invert(unscaled), WHITE_D65);
  return perPlace((row): Vector3 => perPlace((k) => unscaled[row][k] * scale[k]));
}

const TO_XYZ = xyzFromPicture();
const FROM_XYZ = invert(TO_XYZ);

const [[XR, XG, XB], [YR, YG, YB], [ZR, ZG, ZB]] = TO_XYZ;

/** Tristimulus values of a picture's red, green and blue, 1 for white, as far as it holds them. Spelled out: it is asked very often. */
export function xyzOfPicture(red: number, green: number, blue: number): Vector3 {
  const r = held(red);
  const g = held(green);
  const b = held(blue);
  return [XR * r + XG * g + XB * b, YR * r + YG * g + YB * b, ZR * r + ZG * g + ZB * b];
}

/** Red, green and blue of a colour, out of the picture's range too. */
export const pictureOfXyz = (xyz: Vector3): Vector3 => apply(FROM_XYZ, xyz);

/** Luminance of a picture's red, green and blue. */
export const LUMINANCE: Vector3 = [YR, YG, YB];
export const luminanceOf = ([r, g, b]: Vector3): number => YR * r + YG * g + YB * b;

export interface PictureMatrix {
  /** From balanced raw values, all 1 for white. */
  fromRaw: Matrix3;
  /** Squares of what leads back: variance of each raw value for one of the picture's. */
  varianceBack: Matrix3;
}

function pictureMatrixOf({ daylightMatrix, d65White }: SensorProfile): PictureMatrix {
  const toRgb = multiplyMatrices(FROM_XYZ, daylightMatrix);
  const fromRaw = perPlace((row): Vector3 => {
    const weights = perPlace((k) => toRgb[row][k] * d65White[k]);
    const sum = weights[0] + weights[1] + weights[2];
    return perPlace((k) => weights[k] / sum);
  });
  const back = invert(fromRaw);
  return { fromRaw, varianceBack: perPlace((row): Vector3 => perPlace((k) => back[row][k] ** 2)) };
}

export const pictureMatrix = rememberFor(pictureMatrixOf);

/** What a picture holds of red, green and blue. */
export const clipped = ([r, g, b]: Vector3): Vector3 => [held(r), held(g), held(b)];
