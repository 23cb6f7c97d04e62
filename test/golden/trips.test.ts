// The golden figures of what plans more than one scene at a time: those of the description's examples.
import { it } from "vitest";
import { prepareTrip, tripOperations } from "../../services/api/src/features/trips/index.js";
import { tongueOf } from "../../services/api/src/tongues.js";
import { holdGolden } from "./hold.js";
import { recorded } from "./recorded.js";

const hold = holdGolden({ isOurs: () => false, version: "version" });

it.each(tripOperations.map((operation) => ({ name: operation.name, operation })))(
  "$name gives the figures that are kept",
  ({ name, operation }) => {
    const now = Object.entries(operation.examples).map(([example, { value }]) => {
      const ready = prepareTrip(operation, value, tongueOf("en"));
      return [example, recorded(ready.status === "ready" ? ready.compute() : ready)];
    });
    hold(name, Object.fromEntries(now));
  },
);
