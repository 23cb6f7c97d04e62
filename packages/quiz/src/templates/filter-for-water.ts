import type { FilterVerdict } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { Template } from "../item/template.js";
import { filterFor, lightAt } from "../light/remembered.js";
import { byDay, WATERS } from "../light/scenes.js";
import { spectrumPicture } from "../picture/spectrum.js";

const SUN_DEG = 50;
/** Where the runner-up is the better one more often than this, the question would not be fair. */
const SURE = 0.2;
const KINDS = ["none", "red", "magenta"] as const;
type Kind = (typeof KINDS)[number];
const MISTAKE: Record<Kind, MisconceptionId> = {
  none: "filter_never_pays",
  red: "red_filter_everywhere",
  magenta: "magenta_filter_everywhere",
};
const isAdvised = (kind: FilterVerdict): kind is Kind => KINDS.some((known) => known === kind);

/** Filter or not, red or magenta. */
export const filterForWater: Template = {
  id: "filter_for_water",
  topic: "filter",
  interaction: "single_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["balance", "filter_on_land"],
  make({ draw, level, say, show }) {
    const water = draw.pick(level === "beginner" ? WATERS.slice(0, 4) : WATERS);
    const depth_m = draw.pick([0.5, 1, 6, 8, 10, 12, 15]);
    const scene = byDay(water, SUN_DEG, depth_m);
    const answer = filterFor(scene);
    const { wavelengths_nm, depths } = lightAt(scene);
    const light = depths[0];
    const key = answer.filter_kind;
    if (!light || !isAdvised(key)) return undefined;
    if (answer.verdict !== "clear" || answer.runner_up.probability_better > SURE) return undefined;
    const text = say.filter.filter_for_water;
    const depth = show.m(depth_m);
    const sun = show.deg(SUN_DEG);
    const best = key === "none" ? answer.runner_up : answer;
    if (best.filter_kind === "none" || best.filter_kind === "neutral") return undefined;
    const error = key === "none" ? answer.runner_up.colour_error_delta_e00 : answer.colour_error_delta_e00;
    // Experts are shown the light and must tell the water themselves.
    const unnamed = level === "expert";
    const most = Math.max(...light.spectrum_left);
    const read = text.read({
      nm: wavelengths_nm[light.spectrum_left.indexOf(most)] ?? 0,
      percent: show.percent(100 * most),
      red: show.percent(100 * (light.spectrum_left[wavelengths_nm.indexOf(600)] ?? 0)),
    });
    return {
      given: { water, sun_deg: SUN_DEG, depth_m },
      stem: unnamed
        ? text.pictureStem({ depth, sun })
        : text.stem({ scene: say.common.scene({ water: say.common.water[water], sun }), depth }),
      ...(unnamed ? { picture: () => spectrumPicture(wavelengths_nm, light.spectrum_left, depth, say) } : {}),
      answer: {
        interaction: "single_choice",
        options: KINDS.map((kind) => ({
          value: kind,
          text: text.option[kind],
          right: kind === key,
          ...(kind === key ? {} : { misconception: MISTAKE[kind] }),
          ...(kind !== key && key === "none" ? { feedback: `${text.notNeeded} ${text.last.none}` } : {}),
        })),
      },
      steps: [
        ...(unnamed ? [{ operation: "judge" as const, text: read }] : []),
        {
          operation: "compare",
          text: text.losses({
            depth,
            red: show.stops(light.red_loss_stops.likely),
            green: show.stops(light.green_loss_stops.likely),
            blue: show.stops(light.blue_loss_stops.likely),
          }),
        },
        {
          operation: "compare",
          text: text.errors({
            without: show.fixed(answer.colour_error_without_delta_e00.likely, 1),
            error: show.fixed(error.likely, 1),
            name: text.named({ kind: best.filter_kind, density: show.density(best.filter_density ?? 0) }),
          }),
        },
        { operation: "recall", text: text.last[key] },
      ],
      sources: ["jerlov_1976", "filter_merit", "filter_shapes", "camera_recording"],
      basis: "computed",
    };
  },
};
