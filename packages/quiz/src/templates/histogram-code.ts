import type { Template } from "../item/template.js";

const FULL = 255;
/** ITU-R BT.709, item 1.2: light 0 to 1 to signal 0 to 1. */
const signal = (light: number): number => (light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099);
const PERCENTS = [18, 25, 36, 50, 60, 75, 90];

/** Where a card of known reflectance lies in the histogram. */
export const histogramCode: Template = {
  id: "histogram_code",
  topic: "exposure",
  interaction: "numeric",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const text = say.camera.histogram_code;
    const percent = draw.pick(PERCENTS);
    const under_stops = level === "expert" ? draw.pick([1, 2]) : 0;
    const light = (percent / 100) * 0.5 ** under_stops;
    const value = FULL * signal(light);
    const right = FULL * signal(percent / 100);
    const shown = show.percent(percent);
    const share = show.percent(100 * light);
    return {
      given: { percent, under_stops },
      stem:
        under_stops === 0
          ? text.stem({ percent: shown })
          : text.underStem({ percent: shown, stops: show.stops(under_stops) }),
      answer: {
        interaction: "numeric",
        value,
        unit: "",
        decimals: 0,
        tolerance: 8,
        anticipated: [
          { misconception: "code_is_linear", value: FULL * light },
          { misconception: "grey_is_middle", value: FULL / 2 },
          ...(under_stops === 0
            ? []
            : ([
                { misconception: "stop_halves_code", value: right * 0.5 ** under_stops },
                { misconception: "underexposure_ignored", value: right },
              ] as const)),
        ],
      },
      steps: [
        { operation: "multiply", text: text.light({ share }) },
        { operation: "power", text: text.last({ share, value: show.fixed(value, 0) }) },
      ],
      sources: ["rec_709"],
      basis: "definition",
    };
  },
};
