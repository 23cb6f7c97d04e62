import type { Language, TripAdviceAnswer, TripAdviceRequest } from "@sunfathom/contract";
import { MODEL_VERSION, type TripAdviceResult } from "@sunfathom/planner";
import type { TextUnits } from "@sunfathom/words";
import { say } from "../say/say.js";
import { sayParts } from "../say/say-parts.js";
import type { TripTongue } from "./ready.js";
import type { ReadTrip } from "./trip-read.js";

export interface Saying {
  request: TripAdviceRequest;
  read: ReadTrip;
  tongue: TripTongue;
  units: TextUnits;
}

/** The language that a guest reads. */
export const languageOf = ({ request, tongue }: Saying, guest_id: string): Language =>
  request.guests.find(({ id }) => id === guest_id)?.language ?? tongue.language;

/** What guests call a dive. */
export const nameOf = ({ request }: Saying, dive_id: string): string =>
  request.dives.find(({ id }) => id === dive_id)?.name ?? dive_id;

/** The same where no time stands beside it: with its id where a site is dived more than once. */
function labelOf(saying: Saying, dive_id: string): string {
  const name = nameOf(saying, dive_id);
  const often = saying.request.dives.filter((dive) => dive.name === name).length > 1;
  return often ? `${name} (${dive_id})` : name;
}

/** A guest's plan for a dive, in the guest's language. */
export const planSaid = (
  saying: Saying,
  { guest_id, plan }: TripAdviceResult["dives"][number]["plans"][number],
): string => {
  const { trips } = saying.tongue.speaking(languageOf(saying, guest_id));
  return plan.map((part) => say(part, trips.trip_plan, saying.units)).join(" ");
};

/** Cautions of light and of mounts, in one language. */
export const cautionsSaid = ({ words }: Pick<TripTongue, "words">) => ({
  ...words["dive-advice"].cautions,
  ...words["filter-mounting"].cautions,
});

/** The answer in words, before it has its form. */
export function answerOf(result: TripAdviceResult, saying: Saying): TripAdviceAnswer {
  const { request, read, tongue, units } = saying;
  const reasons = tongue.trips.trip_advice;
  const { causes } = tongue.words["filter-choice"];
  const { sources, crates, dives, ...said } = sayParts(
    result,
    { reasons, causes, cautions: cautionsSaid(tongue) },
    units,
  );
  return {
    id: request.id,
    ...said,
    dives: dives.map(({ id, time, plans }, d) => {
      const { name, local_time = "", time_zone = "", duration_min = 60 } = request.dives[d] ?? {};
      return {
        id,
        ...(name === undefined ? {} : { name }),
        local_time,
        time_zone,
        time,
        duration_min,
        scene: read.dives[d]?.told ?? {},
        plans: plans.map(({ plan, ...own }) => ({ ...own, text: planSaid(saying, { ...own, plan }) })),
      };
    }),
    crates: crates.map(({ guest_id, pieces }, g) => {
      const { language, trips } = tongue.speaking(languageOf(saying, guest_id));
      const label = pieces.map(({ piece_id, from, rings, dive_ids }) => ({
        piece: piece_id,
        from,
        dives: dive_ids.map((id) => labelOf(saying, id)),
        rings: rings.map(({ ring_id }) => ring_id),
      }));
      return {
        guest_id,
        language,
        camera_assumed: read.guests[g]?.assumed ?? [],
        pieces,
        text: trips.trip_says.trip_crate({ guest: guest_id, pieces: label }),
      };
    }),
    model: { version: MODEL_VERSION, sources },
  };
}
