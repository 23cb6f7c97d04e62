import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneCurve: RuleOf<"one_recording_curve", Nothing> = {
  code: "one_recording_curve",
  violations: ({ recording_curve, recording_curve_points }) =>
    recording_curve === undefined || recording_curve_points === undefined
      ? []
      : [broken("/recording_curve_points", {})],
};

/** Codes that rise by less from point to point, a quarter of one of 8 bits, tell no light from another. */
const LEAST_RISE = { light_share: 0, code_share: 0.001 } as const;

const rising: RuleOf<
  "recording_curve_points_rising",
  { field: "light_share" | "code_share"; value: number; before: number; least_rise: number }
> = {
  code: "recording_curve_points_rising",
  violations: ({ recording_curve_points: points = [] }) =>
    points.flatMap((point, index) => {
      const last = points[index - 1];
      if (last === undefined) return [];
      return (["light_share", "code_share"] as const)
        .filter((field) => point[field] <= last[field] || point[field] - last[field] < LEAST_RISE[field])
        .map((field) =>
          broken(`/recording_curve_points/${index}/${field}`, {
            field,
            value: point[field],
            before: last[field],
            least_rise: LEAST_RISE[field],
          }),
        );
    }),
};

const whole: RuleOf<"recording_curve_points_whole", { wanted: number; light_share: number }> = {
  code: "recording_curve_points_whole",
  violations: ({ recording_curve_points: points = [] }) => {
    const end = (index: number, wanted: number) => {
      const light_share = points[index]?.light_share;
      return light_share === undefined || light_share === wanted
        ? []
        : [broken(`/recording_curve_points/${index}/light_share`, { wanted, light_share })];
    };
    return [...end(0, 0), ...end(points.length - 1, 1)];
  },
};

export const recordingCurveRules = [oneCurve, rising, whole] as const;
