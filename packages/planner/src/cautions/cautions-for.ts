import type { CautionCode } from "../codes/cautions.js";
import { hasLensFilter } from "../light/lens-filter.js";
import type { Caution } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import { type Advice, advisedBy, CAUTIONS_OF } from "./advises.js";

/** What an answer says, and what it advises whatever it says. */
export interface Said {
  reasons?: readonly { code: string }[];
  uncertainty?: readonly { code: string }[];
  /** Ways to pay, or ways out. */
  ways?: readonly { way: string }[];
  advises?: readonly Advice[];
}

/** The order in which cautions are given: what may cost most first. */
const IN_ORDER: readonly CautionCode[] = [
  "not_a_dive_planner",
  "overhead_by_training",
  ...(["way_up", "balance", "closer", "light", "filter_on_land", "filter_under_water"] as const).flatMap(
    (advice) => CAUTIONS_OF[advice],
  ),
];

/** The cautions of these codes, each once and in order. */
export const cautionsIn = (codes: readonly string[]): Caution[] =>
  IN_ORDER.filter((code) => codes.includes(code)).map((code) => ({ code }));

/** The cautions that a scene calls for, and what an answer to it says. */
export function cautionsFor(
  scene: Scene,
  { reasons = [], uncertainty = [], ways = [], advises = [] }: Said = {},
): Caution[] {
  const said = [
    ...reasons.map(({ code }) => code),
    ...uncertainty.map(({ code }) => code),
    ...ways.map(({ way }) => way),
  ];
  const all: Advice[] = [...advises, ...advisedBy(said)];
  if (scene.lamps.length > 0) all.push("light");
  if (hasLensFilter(scene)) all.push(filterAdvice(scene));
  return cautionsIn([
    "not_a_dive_planner",
    ...(scene.daylight_basis === "none" || (scene.overhead ?? "none") !== "none"
      ? ["overhead_by_training"]
      : []),
    ...all.flatMap((advice) => CAUTIONS_OF[advice]),
  ]);
}

/** How the scene's camera changes its filter. */
export const filterAdvice = ({ filter_change_underwater }: Scene): Advice =>
  filter_change_underwater === "none" ? "filter_on_land" : "filter_under_water";
