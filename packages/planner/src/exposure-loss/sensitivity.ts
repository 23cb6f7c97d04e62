/** Product of ISO, shutter time and 1/N^2 that an exposure value at ISO 100 asks for. */
export const sensitivityFor = (ev100: number): number => 100 * 2 ** -ev100;
