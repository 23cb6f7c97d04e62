/** The seeded random numbers of the simulations, for scripts of other packages. */
export { normalFrom } from "#model/random.test-support";
