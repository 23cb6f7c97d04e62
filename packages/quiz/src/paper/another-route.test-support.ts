/**
 * The right answers once more, by another way than the templates take: the water as measured samples of the published table
 * instead of its name, transmittances instead of densities, the texts that learners read instead of the numbers behind them,
 * and hand-written lists where the answer is common practice.
 */
export { RIGHT_CHOICE } from "./another-route/choices.test-support.js";
export { RIGHT_NUMBER } from "./another-route/numbers.test-support.js";
export { PARTNERS, RANK } from "./another-route/orders.test-support.js";
