import { meanSensor, Observers, spectrumFrom, Y_BAR } from "@sunfathom/optics";

const { red, green, blue } = meanSensor(0);
const quanta = spectrumFrom((nm) => (nm < 400 || nm > 700 ? 0 : nm === 400 || nm === 700 ? nm / 2 : nm));

/** Red, green and blue channel, eye, and leaf. */
export const SENSITIVITIES = [red, green, blue, Y_BAR, quanta];
export const OBSERVERS = new Observers(red, green, blue, Y_BAR, quanta);
