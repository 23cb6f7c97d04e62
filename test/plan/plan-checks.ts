/**
 * A reader of plans: does what an answer's steps say, in their order, from their codes and parameters alone, and names every place
 * where the plan cannot be followed. It knows nothing of how plans are made.
 */
import type { Wire } from "./wire.js";

export interface Step {
  phase: string;
  depth_m?: number;
  code: string;
  parameters: Wire;
}

/** What is on the rig, and how the camera is set. */
interface State {
  depth_m: number;
  /** Colour filter on the lens, or carried beside it. */
  filter: "off" | "on";
  carried: boolean;
  neutral: "off" | "on";
  carriesNeutral: boolean;
  lamps: "off" | "on";
  settings: { iso: number; f_number: number; shutter_s?: number; behind: boolean } | undefined;
  /** Under which filter and lamps the camera was last balanced, and where. */
  balance: { filter: string; lamps: string; depth_m: number } | undefined;
}

const THIRD = 1 / 3;
const ON_LENS = ["mount_filter", "keep_filter"];
/** Least distance between two balances, and most lines of an ordinary dive. */
const LEAST_APART_M = 2;
const MOST_LINES = 12;
const MOST_LINES_OF_ANY = 14;
const LARGEST_LAMP_DENSITY = 3;

const isHittable = (depth_m: number): boolean =>
  Number.isInteger(depth_m < 5 ? depth_m * 2 : depth_m) && depth_m > 0;

/** Light that settings ask for, in stops over ISO 100, f/1 and a second: more is darker. */
const stopsOf = ({ iso, f_number, shutter_s = 1 }: { iso: number; f_number: number; shutter_s?: number }) =>
  2 * Math.log2(f_number) - Math.log2(iso / 100) - Math.log2(shutter_s);

export function faultsIn(answer: Wire): string[] {
  const faults: string[] = [];
  const { steps, scene } = answer as { steps: Step[]; scene: Wire };
  const fault = (what: string) => faults.push(what);
  follow(steps, scene, fault);
  checkMounted(answer, fault);
  checkPacking(answer, fault);
  checkBalances(answer, fault);
  checkWords(answer, fault);
  checkCautions(answer, fault);
  checkPromise(answer, fault);
  return faults;
}

/** Does each step in turn. */
function follow(steps: readonly Step[], scene: Wire, fault: (what: string) => void): void {
  const state: State = {
    depth_m: scene.min_depth_m,
    filter: "off",
    carried: false,
    neutral: "off",
    carriesNeutral: false,
    lamps: "off",
    settings: undefined,
    balance: undefined,
  };
  let start: string | undefined;
  /** Coming up begins at the deep end, wherever the last step was. */
  let hasTurned = false;
  let startSettings: State["settings"];
  const lens = () => `${state.filter} ${state.neutral}`;
  for (const step of steps) {
    const { code, phase, depth_m, parameters: p } = step;
    if (phase === "going_down" && depth_m !== undefined) {
      if (start === undefined) start = lens();
      if (depth_m < state.depth_m - 1e-6)
        fault(`${code}: at ${depth_m} m after ${state.depth_m} m going down`);
      state.depth_m = depth_m;
    }
    if (phase === "coming_up" && !hasTurned) {
      hasTurned = true;
      state.depth_m = Math.max(state.depth_m, scene.max_depth_m);
    }
    if (phase === "coming_up" && depth_m !== undefined) {
      if (start === undefined) start = lens();
      if (state.depth_m < depth_m && state.depth_m !== scene.min_depth_m) {
        fault(`${code}: at ${depth_m} m after ${state.depth_m} m coming up`);
      }
      state.depth_m = depth_m;
    }
    if (depth_m !== undefined && !isHittable(depth_m)) fault(`${code}: nobody hits ${depth_m} m`);
    if (ON_LENS.includes(code)) state.filter = "on";
    if (code === "carry_filter") {
      state.carried = true;
      if (p.from_start) state.filter = "on";
    }
    if (code === "neutral_density") {
      state.neutral = "on";
      state.carriesNeutral = p.mount !== "none";
    }
    if (code === "lamps_lead" || code === "lamps_only") state.lamps = "on";
    if (code === "start_exposure") {
      const behind = p.behind !== undefined;
      if (behind !== (state.neutral === "on")) fault("start_exposure: neutral density and settings disagree");
      state.settings = { iso: p.iso, f_number: p.f_number, shutter_s: p.shutter?.shutter_s, behind };
      startSettings = state.settings;
      within(p, scene, code, fault);
    }
    if (code === "balance_on_card" || code === "balance_on_card_in_lamp_light") {
      if (code === "balance_on_card_in_lamp_light") state.lamps = "on";
      state.balance = { filter: state.filter, lamps: state.lamps, depth_m: depth_m ?? scene.min_depth_m };
    }
    if (code.startsWith("filter_") && p.f_number !== undefined) {
      state.settings = { iso: p.iso, f_number: p.f_number, behind: p.behind !== undefined };
    }
    if (code === "filter_in" || code === "filter_out") {
      const wanted = code === "filter_in" ? "off" : "on";
      if (state.filter !== wanted) fault(`${code}: the filter is ${state.filter} already`);
      if (!state.carried) fault(`${code}: the filter is fixed`);
      state.filter = code === "filter_in" ? "on" : "off";
      state.balance = { filter: state.filter, lamps: state.lamps, depth_m: depth_m ?? state.depth_m };
    }
    if (code === "neutral_off" || code === "neutral_on") {
      if (!state.carriesNeutral) fault(`${code}: the neutral filter is fixed`);
      const wanted = code === "neutral_off" ? "on" : "off";
      if (state.neutral !== wanted) fault(`${code}: it is ${state.neutral} already`);
      state.neutral = code === "neutral_off" ? "off" : "on";
      state.settings = { iso: p.iso, f_number: p.f_number, behind: state.neutral === "on" };
    }
    if (code === "balance_again") {
      if (!state.balance) fault("balance_again: nothing was balanced before");
      else if (state.balance.filter !== state.filter || state.balance.lamps !== state.lamps)
        fault("balance_again: the last balance was made behind something else");
      const depths = p.depths_m as number[];
      const sorted = [...depths].sort((a, b) => (phase === "going_down" ? a - b : b - a));
      if (String(sorted) !== String(depths)) fault(`balance_again: ${String(depths)} is out of order`);
      for (const at of depths) if (!isHittable(at)) fault(`balance_again: nobody hits ${at} m`);
      state.depth_m = depths.at(-1) ?? state.depth_m;
    }
    if (code === "deep_exposure" || code === "shallow_exposure") {
      const behind = p.behind !== undefined;
      if (behind !== (state.neutral === "on")) fault(`${code}: neutral density and settings disagree`);
      const now = { iso: p.iso, f_number: p.f_number, shutter_s: p.shutter?.shutter_s };
      const was = state.settings;
      if (was && (was.shutter_s === undefined) === (now.shutter_s === undefined)) {
        const closes = stopsOf(now) - stopsOf(was);
        if (code === "deep_exposure" ? closes > -0.1 : closes < 0.1)
          fault(`${code}: ${closes.toFixed(2)} stops the wrong way`);
      }
      state.settings = { ...now, behind };
      within(p, scene, code, fault);
    }
    if (code === "too_dark" && phase === "going_down") {
      state.settings = { iso: p.iso, f_number: p.f_number, behind: false };
    }
  }
  if (startSettings && state.settings) {
    const sameShutter = startSettings.shutter_s === state.settings.shutter_s;
    if (!sameShutter || Math.abs(stopsOf(startSettings) - stopsOf(state.settings)) > 1.2 * THIRD)
      fault("exposure is opened going down and not closed coming up");
  }
  if (start !== undefined && start !== lens()) fault(`the lens starts ${start} and ends ${lens()}`);
}

function within(p: Wire, scene: Wire, code: string, fault: (what: string) => void): void {
  const low = scene.iso ?? scene.min_iso;
  const high = scene.iso ?? scene.max_iso;
  if (p.iso < low * 0.99 || p.iso > high * 1.01) fault(`${code}: the camera has no ISO ${p.iso}`);
  if (p.f_number < scene.min_f_number * 0.99 || p.f_number > scene.max_f_number * 1.01)
    fault(`${code}: the lens has no f/${p.f_number}`);
}

const stepOf = (answer: Wire, ...codes: string[]): Step | undefined =>
  (answer.steps as Step[]).find(({ code }) => codes.includes(code));

const sameFilter = (a: Wire, b: Wire): boolean =>
  a?.kind === b?.kind &&
  (a?.density === undefined) === (b?.density === undefined) &&
  Math.abs((a?.density ?? 0) - (b?.density ?? 0)) < 0.005;

/** What the caller mounted is used, bettered or refused by name, on the lens and on the lamps. */
function checkMounted(answer: Wire, fault: (what: string) => void): void {
  const { scene } = answer;
  const step = stepOf(
    answer,
    "mount_filter",
    "keep_filter",
    "carry_filter",
    "no_filter",
    "no_filter_for_lamps",
  );
  if (!step) return void fault("no step says what is on the lens");
  const hasFilter = scene.filter_kind !== undefined || scene.filter_transmittance !== undefined;
  const { filter, instead_of } = step.parameters;
  if (hasFilter) {
    const named = step.code === "keep_filter" ? filter : (instead_of ?? filter);
    const given = { kind: scene.filter_kind, density: scene.filter_density };
    if (!named || (scene.filter_transmittance === undefined && !sameFilter(named, given)))
      fault("the lens filter of the scene is passed over in silence");
  } else if (instead_of || step.code === "keep_filter") fault("a filter is named that nobody mounted");
  if (
    (scene.lamps as Wire[]).some(
      (lamp) => lamp.filter_kind !== undefined || lamp.filter_transmittance !== undefined,
    )
  ) {
    if (!stepOf(answer, "filter_lamps", "keep_lamp_filters", "bare_lamps", "lamps_off"))
      fault("the filters on the lamps are passed over in silence");
  }
}

/** Packing lists what the plan uses. */
function checkPacking(answer: Wire, fault: (what: string) => void): void {
  const taken = (answer.take as Step[]).map(({ code }) => code);
  const needs: [boolean, string][] = [
    [stepOf(answer, "mount_filter", "keep_filter", "carry_filter") !== undefined, "lens_filter"],
    [stepOf(answer, "neutral_density") !== undefined, "neutral_density"],
    [stepOf(answer, "filter_lamps", "keep_lamp_filters") !== undefined, "lamp_filters"],
    [answer.scene.lamps.length > 0, "lamp"],
    [true, "card"],
  ];
  for (const [needed, item] of needs) {
    if (needed !== taken.includes(item))
      fault(`packing: ${item} is ${needed ? "used and not listed" : "listed and not used"}`);
  }
}

function checkBalances(answer: Wire, fault: (what: string) => void): void {
  for (const way of ["descending", "ascending"] as const) {
    const depths = answer[`balance_depths_${way}_m`] as number[];
    for (const [i, depth_m] of depths.entries()) {
      if (!isHittable(depth_m)) fault(`balances ${way}: nobody hits ${depth_m} m`);
      const apart = i === 0 ? LEAST_APART_M : Math.abs(depth_m - depths[i - 1]);
      if (apart < LEAST_APART_M - 1e-6) fault(`balances ${way}: ${apart} m apart`);
    }
  }
  const serves = answer.reasons.some((r: Step) => r.code === "one_balance_serves");
  const short = answer.reasons.find((r: Step) => r.code === "balance_falls_short");
  if (serves && short && short.parameters.cast > answer.scene.balance_tolerance_delta_e00 + 1)
    fault(`one balance serves, with a cast of ${short.parameters.cast}`);
}

/** What cautions say, each by words that no other sentence of a plan may use: it is said once, by the caution or by a step. */
const SAID_ONCE: readonly [what: string, by: RegExp][] = [
  ["lights on in water only", /in water only|in water, not in air|once they are under water|does not\.$/i],
  ["lights stay on the rig", /on the rig\b/i],
  ["no eyes", /\beyes\b/i],
  ["batteries by their makers", /makers' instructions/i],
  ["the ascent first", /safety stop/i],
  ["a white balance only while hovering", /set a white balance only while/i],
  ["backup lights", /backup lights/i],
];

function checkCautions(answer: Wire, fault: (what: string) => void): void {
  const codes = (answer.cautions as Step[]).map(({ code }) => code);
  for (const code of new Set(codes)) {
    if (codes.indexOf(code) !== codes.lastIndexOf(code)) fault(`the caution ${code} is given twice`);
  }
  const lines: string[] = [
    ...answer.steps.flatMap(({ text, why }: Wire) => [text, why]),
    ...answer.take.flatMap(({ what, why }: Wire) => [what, why]),
    ...[...answer.reasons, ...answer.cautions].map(({ text }: Wire) => text),
  ];
  for (const [what, by] of SAID_ONCE) {
    const times = lines.filter((line) => by.test(line)).length;
    if (times > 1) fault(`${what}: said ${times} times`);
  }
}

/** Ranks that texts tell colour errors in: from 5 and from 12 on. */
const rankOf = (delta_e00: number): number => (delta_e00 < 5 ? 0 : delta_e00 < 12 ? 1 : 2);

/**
 * What a filter is promised to leave is no better than what a reason tells of the deep end. Where the balance falls short above alone,
 * as behind a filter that is owned and too dense there, no line of a plan says so yet.
 */
function checkPromise(answer: Wire, fault: (what: string) => void): void {
  const mounted = stepOf(answer, "mount_filter", "keep_filter", "carry_filter")?.parameters;
  const short = answer.reasons.find((r: Step) => r.code === "balance_falls_short")?.parameters;
  if (!mounted || !short || short.depth_m > (mounted.to_m ?? answer.scene.max_depth_m)) return;
  if (short.depth_m < answer.scene.max_depth_m - 0.01) return;
  const { below } = mounted;
  if (below && rankOf(below.error) <= rankOf(mounted.with_e)) fault("below is no worse than above");
  if (below && below.from_m > short.depth_m) fault(`worse from ${below.from_m} m, and at ${short.depth_m} m`);
  const promised = below ? Math.max(below.error, mounted.with_e) : mounted.with_e;
  if (rankOf(promised) < rankOf(short.cast))
    fault(`promises an error of ${promised}, and leaves a cast of ${short.cast} at ${short.depth_m} m`);
}

/** What contradicts itself, or is not to be had. */
function checkWords(answer: Wire, fault: (what: string) => void): void {
  const { steps, scene, remember } = answer;
  // What is changed under water, or where two lights or haze ask for a choice, takes lines of its own.
  const more = ["carry_filter", "neutral_density", "keep_lamp_filters"];
  const most = stepOf(answer, ...more) ? MOST_LINES_OF_ANY : MOST_LINES;
  if (steps.length > most) fault(`${steps.length} lines`);
  const fixed = stepOf(answer, "mount_filter", "keep_filter");
  const other = stepOf(answer, "lamps_other_way");
  if (fixed && other && ["balance_to_lamps", "come_closer"].includes(other.parameters.way.code))
    fault("lamps are to lead with a fixed colour filter on the lens");
  if (fixed && stepOf(answer, "lamps_from")) fault("lamps go on with a fixed colour filter on the lens");
  const texts = JSON.stringify(steps);
  for (const match of texts.matchAll(/"way":\{"code":"lamp_filter","parameters":(\{[^}]*\})/g)) {
    if (JSON.parse(match[1] ?? "{}").density >= LARGEST_LAMP_DENSITY)
      fault("a lamp filter at the field's maximum");
  }
  const red = stepOf(answer, "grade_red");
  if (red && red.parameters.acceptable_m <= scene.min_depth_m) fault("red is expected above the dive");
  const gone_m = (red ?? stepOf(answer, "grade_no_red"))?.parameters.gone_m;
  if (gone_m >= scene.max_depth_m) fault(`red is said to end at ${gone_m} m, below the dive`);
  const onCard = stepOf(answer, "balance_on_card");
  if (onCard && (onCard.parameters.far === undefined) === (scene.subject_in_reach === false))
    fault("the card is held where nobody reaches, or far from where it could be");
  for (const [, gains] of texts.matchAll(/"gains_stops":(-?[\d.e-]+)/g)) {
    if (Number(gains) < 0) fault(`a way to pay gains ${gains} stops`);
  }
  const told =
    /red/.test(answer.filter_kind) && answer.reasons.find((r: Step) => r.code === "filter_adds_no_red");
  if (told && scene.min_depth_m === told.parameters.depth_m && told.parameters.with_share < 0.005)
    fault("red is mounted where no red is left");
  if (!remember || remember.first_balance_depth_m === undefined) fault("nothing to remember first");
}
