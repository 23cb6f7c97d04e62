import { FIRST_NM, type Spectrum, STEP_NM, WAVELENGTHS_NM } from "@sunfathom/optics";

const indexOf = (nm: number): number => (nm - FIRST_NM) / STEP_NM;

/** 1 inside a band and a half at its ends, as the trapezoid rule has it. */
export const band = (from_nm: number, to_nm: number): Spectrum =>
  WAVELENGTHS_NM.map((nm, i) =>
    i === indexOf(from_nm) || i === indexOf(to_nm) ? 0.5 : nm > from_nm && nm < to_nm ? 1 : 0,
  );
