import type { TripAdviceResult } from "@sunfathom/planner";
import type { TripCalendar } from "./ready.js";
import { cautionsSaid, languageOf, nameOf, planSaid, type Saying } from "./trip-say.js";

/** The dives of a trip as events: those of one guest, or of the crew with what everyone uses. */
export function calendarOf(result: TripAdviceResult, saying: Saying): TripCalendar {
  const { request, read, tongue } = saying;
  const { calendar_for } = request;
  const speaking = calendar_for === undefined ? tongue : tongue.speaking(languageOf(saying, calendar_for));
  const texts = cautionsSaid(speaking);
  const says = speaking.trips.trip_says;
  const cautions = result.cautions.map(({ code }) => texts[code]);
  return {
    id: request.id,
    ...(calendar_for === undefined ? {} : { guest_id: calendar_for }),
    language: speaking.language,
    events: result.dives.map(({ id, plans }, d) => {
      const dive = nameOf(saying, id);
      const { local_time = "", time_zone = "", duration_min = 60 } = request.dives[d] ?? {};
      const { latitude_deg, longitude_deg } = read.dives[d]?.dive.scene ?? {};
      const own = plans.find(({ guest_id }) => guest_id === calendar_for);
      const uses = plans.map(({ guest_id, piece }) =>
        says.trip_uses({
          guest: guest_id,
          ...(piece === undefined ? {} : { piece: piece.piece_id }),
          rings: (piece?.rings ?? []).map(({ ring_id }) => ring_id),
        }),
      );
      const piece = own?.piece?.piece_id;
      return {
        id,
        title:
          own === undefined ? dive : says.trip_event({ dive, ...(piece === undefined ? {} : { piece }) }),
        text: [...(own === undefined ? uses : [planSaid(saying, own)]), "", ...cautions].join("\n"),
        place: dive,
        local_time,
        time_zone,
        duration_min,
        ...(latitude_deg === undefined || longitude_deg === undefined
          ? {}
          : { position: { latitude_deg, longitude_deg } }),
      };
    }),
  };
}
