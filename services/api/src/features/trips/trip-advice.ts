import { tripAdviceReady } from "@sunfathom/answers";
import { mostTrip, tripAdviceExamples } from "@sunfathom/contract";
import { costOfCalculation } from "../../compute/cost.js";
import { tripOperation } from "./trip-operation.js";

/** A filter before a camera at one depth. */
const judgement = 0.8;
/** A piece that a guest may be given: where many are alike, each is looked at again and again. */
const choice = 1 / 8;
/** What a plan says of exposure and balances. */
const planOfGuest = 4;
/** A piece tried on a camera. */
const fit = 1;
/** What the clocks of a zone do in a year, as a calendar tells it. */
const clockYear = 12;
/** What is not known, one cause after another, for one guest; and what all of it stands in. */
const spread = 120;

/** Who mounts what on each dive of a trip. */
export const tripAdvice = tripOperation({
  name: "trip-advice",
  operationId: "computeTripAdvice",
  summary: "One shelf of filters for all guests of a trip",
  description: `For up to ${mostTrip.dives} dives, ${mostTrip.guests} guests with their cameras and a shelf of up to ${mostTrip.shelf} filters, with how many there are of each: what each guest mounts and sets on each dive, what goes into each crate, and what goes on the boat or stays ashore. The shelf is handed out again for each dive, to guests whom a filter fits and who gain enough by it: the guest who would be worst off, by the colour error that is left, is served as well as can be, then the next one, and so on; exactly, and not one after another. What is even goes by the guests' ids. As \`text/calendar\` (RFC 5545, by \`Accept\`) the answer is an event for each dive, of one guest in the guest's language (\`calendar_for\`), or of the crew.`,
  request: "TripAdviceRequest",
  answer: "TripAdviceAnswer",
  examples: tripAdviceExamples,
  forms: ["application/json", "text/calendar"],
  prepare: tripAdviceReady,
  cost: ({ size: { lights, choices, plans, fits, clockYears } }) => {
    const seen = lights.reduce(
      (sum, { scene, judged }) => sum + costOfCalculation("attenuation", scene) + judged * judgement,
      0,
    );
    const given = choices * choice + plans * planOfGuest + fits * fit;
    return Math.ceil(spread + seen + given + clockYears * clockYear);
  },
});
