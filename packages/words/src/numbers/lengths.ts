import type { TextUnits } from "../problems/texts.js";
import type { Formats } from "./formats.js";

/** The international foot, exact (NIST Special Publication 811, 2008, appendix B.8). */
export const metresPerFoot = 0.3048;

/** Lengths as a diver uses them. */
export interface Lengths {
  /** The number alone of a depth: to 1 m, to 0.5 m where shallower than 5 m; to whole feet. */
  depthNumber(depth_m: number, units?: TextUnits): string;
  depth(depth_m: number, units?: TextUnits): string;
  /** A depth that is written already, or several, with their unit. */
  withUnit(depths: string, units?: TextUnits): string;
  /** A distance to 0.1 m, and to 0.05 m below half a metre; to inches below a yard, to half feet below ten, and to whole feet above. */
  distance(distance_m: number, units?: TextUnits): string;
  /** A distance to whole centimetres, or to half inches. */
  near(distance_mm: number, units?: TextUnits): string;
}

/** As many as a length to hundredths needs. */
const decimalsOf = (value: number): number => String(value).split(".")[1]?.length ?? 0;

export function lengthsOf({ shown, unit }: Pick<Formats, "shown" | "unit">): Lengths {
  const halves = (value: number): string => {
    const rounded = Math.round(value * 2) / 2;
    return shown(rounded, Number.isInteger(rounded) ? 0 : 1);
  };
  const depthNumber = (depth_m: number, units?: TextUnits): string => {
    if (units === "imperial") return shown(depth_m / metresPerFoot);
    return depth_m < 5 ? halves(depth_m) : shown(depth_m);
  };
  const withUnit = (depths: string, units?: TextUnits): string =>
    unit(depths, units === "imperial" ? "ft" : "m");
  return {
    depthNumber,
    withUnit,
    depth: (depth_m, units) => withUnit(depthNumber(depth_m, units), units),
    distance: (distance_m, units) => {
      if (units !== "imperial") {
        const per = distance_m < 0.5 ? 20 : 10;
        const rounded = Math.round(distance_m * per) / per;
        return unit(shown(rounded, decimalsOf(rounded)), "m");
      }
      const feet = distance_m / metresPerFoot;
      if (feet < 3) return unit(shown(feet * 12), "in");
      return unit(feet < 10 ? halves(feet) : shown(feet), "ft");
    },
    near: (distance_mm, units) =>
      units === "imperial" ? unit(halves(distance_mm / 25.4), "in") : unit(shown(distance_mm / 10), "cm"),
  };
}
