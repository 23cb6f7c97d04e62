import { type PictureMatrix, xyzOfPicture } from "../../camera/picture.js";
import type { Finished } from "./seen.js";

/** Nothing after the camera: what its own matrix makes of balanced values, as far as the picture holds it. */
export function inCamera({ fromRaw }: PictureMatrix): Finished {
  const [[rr, rg, rb], [gr, gg, gb], [br, bg, bb]] = fromRaw;
  return (r, g, b) =>
    xyzOfPicture(rr * r + rg * g + rb * b, gr * r + gg * g + gb * b, br * r + bg * g + bb * b);
}
