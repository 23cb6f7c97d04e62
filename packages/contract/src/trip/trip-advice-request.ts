import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional, withOptionalBut } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { givenKitFields } from "../scene/kit.js";
import { FilterHolder, mountedFilterFields, StepRing } from "../scene/mounting/filter.js";
import { Language, textsAskedFields } from "../scene/texts-asked.js";
import { localTimePattern } from "../scene/time.js";
import { tripAdviceExamples } from "./trip-advice-examples.js";
import { diveLength_min, mostTrip, mostTripJudged } from "./values.js";

const example = tripAdviceExamples.two_guests_one_filter.value;

/** Objects that are checked by what they are part of. */
const open = (description: string, value: object) =>
  annotate(z.object({}).describe(description), { examples: [value] });

const ownId = (description: string, value: string) => text({ description, example: value, maxLength: 64 });

const {
  holder_inner_diameter_mm,
  filter_thread_mm,
  filter_clear_diameter_mm,
  filter_thickness_mm,
  filter_material,
  sheet_thickness_mm,
  sheet_refractive_index,
} = mountedFilterFields;

const mountFields = {
  holder: choice(FilterHolder, {
    description:
      "What the piece is made for. Left out, it is a round filter, for the thread of a lens or a port.",
    example: "rear_sheet",
  }),
  holder_inner_diameter_mm,
  filter_thread_mm,
  filter_clear_diameter_mm,
  filter_thickness_mm,
  filter_material,
  sheet_thickness_mm,
  sheet_refractive_index,
};

const pieceFields = {
  ...givenKitFields,
  ...withOptional(mountFields, Object.keys(mountFields) as (keyof typeof mountFields)[]),
};

const quantityOf = (what: string) =>
  quantity({
    description: `How many of ${what} there are.`,
    unit: "1",
    min: 1,
    max: mostTrip.quantity,
    integer: true,
    example: 2,
  });

export const TripPiece = z
  .object(pieceFields)
  .strict()
  .describe("An item that a guest owns: as in a `kit`, with what a filter screws into or is held by.");

export const ShelfPiece = z
  .object({ ...pieceFields, quantity: quantityOf("it") })
  .strict()
  .describe(
    "A filter of the shop's shelf: as in a `kit`, with what it screws into or is held by, and how many there are.",
  );

export const ShelfRing = z
  .object({ ...StepRing.shape, quantity: quantityOf("them") })
  .strict()
  .describe("A ring of the shop that leads from one thread to another, and how many there are.");

export const TripDive = z
  .object(
    withOptional(
      {
        id: ownId("Your own name for the dive; answers use it.", "d1"),
        name: text({
          description: "What guests call the site; a calendar shows it. The `id` by default.",
          example: "Gannet Stair",
          maxLength: 80,
        }),
        local_time: text({
          description: "When the dive begins, by the clocks of the site, without offset.",
          example: "2027-01-16T09:30",
          pattern: localTimePattern,
        }),
        time_zone: text({
          description: "Time zone of the site, by its name in the IANA database.",
          example: "Etc/GMT+9",
          maxLength: 64,
        }),
        duration_min: quantity({
          description: "How long the calendar keeps free for it. No advice on how long to dive.",
          unit: "min",
          min: diveLength_min.least,
          max: diveLength_min.most,
          integer: true,
          example: 60,
          default: diveLength_min.usual,
        }),
        scene: open(
          "Water, place or sun, depths and view: a scene as `filter-choice` takes it, without time, camera, filters and video lights. With `daylight_basis` `none`, or at night, nothing is handed out.",
          example.dives[0].scene,
        ),
      },
      ["name", "duration_min"],
    ),
  )
  .strict()
  .describe("A dive of the trip.");

export const TripGuest = z
  .object(
    withOptional(
      {
        id: ownId("Your own name for the guest, who need not be known by it; answers use it.", "g1"),
        language: choice(Language, {
          description: "Language of the guest's own texts. That of the answer by default.",
          example: "de",
        }),
        camera: open(
          "The camera: the fields of a scene that say how it exposes, sets its white balance and records; and, from `port_kind` and `lens_kind` on, what a filter is mounted on, with the guest's own `rings`. Without these two every piece is taken to fit.",
          example.guests[0].camera,
        ),
        kit: list(TripPiece, {
          description: "What the guest owns. None by default.",
          example: [{ id: "own-red", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
          maxItems: mostTrip.kit,
        }),
      },
      ["language", "kit"],
    ),
  )
  .strict()
  .describe("A guest with a camera.");

const fields = {
  id: ownId(
    "Your own name for the trip. Events of a calendar are known by it, so keep it.",
    "packet-2027-03",
  ),
  dives: list(TripDive, {
    description: `The dives, 1 to ${mostTrip.dives}.`,
    example: example.dives,
    minItems: 1,
    maxItems: mostTrip.dives,
  }),
  guests: list(TripGuest, {
    description: `The guests with cameras, 1 to ${mostTrip.guests}. Dives times different cameras times different filters make ${mostTripJudged} at most.`,
    example: [example.guests[0], example.guests[1]],
    minItems: 1,
    maxItems: mostTrip.guests,
  }),
  shelf: list(ShelfPiece, {
    description: `Filters to share, up to ${mostTrip.shelf} kinds. None by default.`,
    example: example.shelf,
    maxItems: mostTrip.shelf,
  }),
  rings: list(ShelfRing, {
    description: `Step rings to share, up to ${mostTrip.rings} kinds. None by default.`,
    example: example.rings,
    maxItems: mostTrip.rings,
  }),
  calendar_for: ownId(
    "The guest, by `id`, whose calendar `text/calendar` is to be, in that guest's language. Left out, it is that of the crew, with everyone's filters.",
    "g1",
  ),
  ...textsAskedFields,
  ...everySceneFields,
};

/** Dives, guests and one shelf. */
export const TripAdviceRequest = z
  .object(withOptionalBut(fields, ["id", "dives", "guests"]))
  .strict()
  .describe("The dives of a trip, the guests with their cameras, and the filters that they share.");
export type TripAdviceRequest = z.infer<typeof TripAdviceRequest>;
