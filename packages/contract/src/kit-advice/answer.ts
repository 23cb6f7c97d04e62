import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, flag, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { adviceTail, Reason } from "../result/common.js";
import { ColourErrorEstimate } from "../result/estimates.js";
import { FilterVerdict } from "../result/filter-choice.js";
import { MountVerdict } from "../result/filter-mounting.js";
import { colourError, density, share } from "../result/quantities.js";
import { FilterHolder } from "../scene/mounting/filter.js";
import { PieceItem } from "./request.js";
import { kitMethods, largestExactKit, lightUses, mostKitDives, mostKitPieces, pieceRoles } from "./values.js";

export const KitMethod = z
  .enum(kitMethods)
  .describe(
    `How the set was found: \`exact\`, no smaller one serves every dive, or \`greedy\`, piece by piece, where none of up to ${largestExactKit} pieces does; a smaller one may then be there.`,
  );

export const LightUse = z
  .enum(lightUses)
  .describe(
    "What video lights do on a dive: `none`; the only light (`lamps_only`); they lead, or daylight does, and one balance suits both; or no light leads, and they are on as they are (`lamps_with_daylight`) or behind a filter that matches them to daylight (`lamps_with_filter`).",
  );

export const PieceRole = z
  .enum(pieceRoles)
  .describe(
    "What becomes of a piece: `take` it, `leave` it (it would help, by less than the limit), it is `never_used`, or `not_judged`, as a neutral-density filter is not by its colours.",
  );

export const KitVerdict = z
  .enum(["clear", "near_tie"])
  .describe("Whether a call is clear, or a near tie: it may as well be the other way round.");

const idText = (description: string, example: string) => text({ description, example });
const anyScene = (description: string) =>
  annotate(z.object({}).describe(description), {
    examples: [{ water_type: "IB", min_depth_m: 5, max_depth_m: 18 }],
  });

const onDiveFields = {
  id: idText("Your name for the dive.", "gannet-reef"),
  scene: anyScene("The dive that was answered, with every default filled in."),
  filter_id: idText("The filter on the lens; absent for none.", "red-dense"),
  light_id: idText("The video light; absent for none.", "wide-lights"),
  lamp_filter_id: idText("The filter on the video light; absent for none.", "blue-sheet"),
  held_by: list(idText("A ring or a holder.", "ring-52-67"), {
    description: "Rings and holder from the set that hold the filter.",
    example: ["ring-52-67"],
  }),
  holder: choice(FilterHolder, {
    description: "How the filter is held, where the dive says what it is mounted on.",
    example: "screw_on_lens",
  }),
  mount_verdict: choice(MountVerdict, {
    description: "Whether that fits, or with care; `filter-mounting` says why.",
    example: "fits",
  }),
  change_at_depth: flag({ description: "Whether the filter can be changed under water.", example: false }),
  light_use: choice(LightUse, { description: "What the video light does.", example: "none" }),
  colour_error_delta_e00: ColourErrorEstimate.describe(
    "Colour error with the set (CIEDE2000), as `filter-choice` judges it for the finish, as the mean over the filmed depths. Where no light leads, that of the whole picture.",
  ),
  colour_error_without_delta_e00: colourError(
    "The same with none of the pieces; absent where there is then no light to film by.",
    17.3,
  ),
  colour_error_whole_kit_delta_e00: colourError("The same with whichever of all pieces is best.", 4.1),
  regret_delta_e00: ColourErrorEstimate.describe(
    "What the set loses on this dive against all pieces, as colour error.",
  ),
  filter_loss_stops: quantity({
    description: "Light that the filter on the lens takes.",
    unit: "stop",
    decimals: 2,
    min: 0,
    max: 10000,
    example: 1.6,
  }),
  probability_over_limit: share("How likely it is that the dive loses as much as the limit.", 0.08),
  verdict: choice(KitVerdict, {
    description: "A near tie where that is 0.25 or more.",
    example: "clear",
  }),
};

export const KitOnDive = z
  .object(
    withOptional(onDiveFields, [
      "filter_id",
      "light_id",
      "lamp_filter_id",
      "holder",
      "mount_verdict",
      "colour_error_without_delta_e00",
    ]),
  )
  .describe("A dive as it is filmed with the set.");

const boughtOn = (description: string) => colourError(description, 1.7);

export const PieceOnDive = z
  .object(
    withOptional(
      {
        id: idText("Your name for the dive.", "gannet-reef"),
        buys_delta_e00: boughtOn(
          "Colour error that the piece takes away there; absent where nothing can be filmed without it.",
        ),
      },
      ["buys_delta_e00"],
    ),
  )
  .describe("What a piece does on a dive.");

const exampleReason = {
  code: "piece_buys",
  text: "Without it the colours of 2 dives are worse, by up to 9.1.",
  basis: "computed" as const,
  figures: [{ name: "dives", value: 2 }],
  parameters: { dives: 2, delta_e00: 9.1 },
};

export const KitPieceAdvice = z
  .object(
    withOptional(
      {
        id: idText("Your name for the piece.", "red-dense"),
        item: choice(PieceItem, { description: "What it is.", example: "lens_filter" }),
        role: choice(PieceRole, { description: "What becomes of it.", example: "take" }),
        buys_delta_e00: quantity({
          description:
            "Colour error that it takes away on all dives together: from what the set has without it, or, for one that is left, from what the set has. Absent where a dive cannot be filmed without it, and for what is not judged.",
          unit: "1",
          decimals: 2,
          min: 0,
          max: 12000,
          example: 14.26,
        }),
        dives: list(PieceOnDive, {
          description: "The dives on which it does.",
          example: [],
          maxItems: mostKitDives,
        }),
        probability_needless: share(
          "Of one to take: how likely it is that the set would do without it.",
          0.03,
        ),
        verdict: choice(KitVerdict, {
          description: "A near tie where that is 0.25 or more.",
          example: "clear",
        }),
        reason: annotate(Reason.describe("Why."), { examples: [exampleReason] }),
      },
      ["buys_delta_e00", "probability_needless"],
    ),
  )
  .describe("What becomes of a piece, and what it buys.");

export const GainOnDive = z
  .object({
    id: idText("Your name for the dive.", "mole"),
    gains_delta_e00: colourError("Colour error that the filter would take away there.", 2.4),
  })
  .describe("What a further filter would do on a dive.");

export const OneMoreFilter = z
  .object({
    filter_kind: choice(FilterVerdict, { description: "Its kind.", example: "red" }),
    filter_density: density("Its density, in steps of half a stop.", 0.9),
    gains_delta_e00: quantity({
      description: "Colour error that it would take away on all dives together, beyond all pieces.",
      unit: "1",
      decimals: 2,
      min: 0,
      max: 12000,
      example: 3.1,
    }),
    dives: list(GainOnDive, {
      description: "The dives on which it would.",
      example: [{ id: "mole", gains_delta_e00: 2.4 }],
      maxItems: mostKitDives,
    }),
  })
  .describe("The one filter, whatever it is held by, that would help most beyond all pieces, by daylight.");

const ids = (description: string) =>
  list(idText("Your name for a piece.", "red-dense"), {
    description,
    example: ["red-dense", "wide-lights"],
    maxItems: mostKitPieces,
  });

export const KitAdviceAnswer = z
  .object(
    withOptional(
      {
        take: ids("The set: the pieces to take, in the order of their ids. Empty where none is needed."),
        method: choice(KitMethod, { description: "How it was found.", example: "exact" }),
        regret_limit_delta_e00: colourError("What a dive may lose against all pieces: less than this.", 1),
        total_regret_delta_e00: quantity({
          description: "What the set loses on all dives together.",
          unit: "1",
          decimals: 2,
          min: 0,
          max: 12000,
          example: 1.71,
        }),
        dives: list(KitOnDive, {
          description: "Each dive, in the order of their ids.",
          example: [],
          maxItems: mostKitDives,
        }),
        pieces: list(KitPieceAdvice, {
          description: "Each piece, in the order of their ids.",
          example: [],
          maxItems: mostKitPieces,
        }),
        one_more: OneMoreFilter.describe(
          "What one more filter would help most; absent where none gains as much as the limit on any dive.",
        ),
        ...adviceTail,
      },
      ["one_more"],
    ),
  )
  .describe(
    "The smallest set of pieces that serves all dives, what each piece buys, and what one more would.",
  );
export type KitAdviceAnswer = z.infer<typeof KitAdviceAnswer>;
