import { power } from "@sunfathom/optics";

/** Weight that makes equal squares of XYZ error about equally visible at all lightnesses: slope of L* with Y, squared. */
export const visibility = (Y: number): number => power(Y + 0.02, -4 / 3);
