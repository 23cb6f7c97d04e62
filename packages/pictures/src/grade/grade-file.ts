/**
 * A starting grade as a file for other programs: the Common LUT Format (SMPTE ST 2136-1; the Academy's S-2014-006, version 3) or the
 * Color Decision List of the American Society of Cinematographers (version 1.2), which knows neither matrices nor curves.
 */
import { type EditStart, linearAt, type StartingGrade, type Transfer } from "@sunfathom/planner";
import type { GradeTexts, TextUnits } from "@sunfathom/words";
import { type Element, el, write } from "../svg/element.js";

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
/** As many digits as a program of 32 bits tells apart. */
const digits = (value: number): string => String(Number(value.toPrecision(9)));
const depths = { inBitDepth: "32f", outBitDepth: "32f" } as const;

export interface Saying {
  texts: GradeTexts;
  caution: string;
  units: TextUnits;
}

/** What the file says of itself, a sentence an element. */
function told(grade: StartingGrade, { texts, caution, units }: Saying): Element[] {
  const { holds_min_depth_m: min_depth_m, holds_max_depth_m: max_depth_m } = grade;
  return [
    texts.name(grade, units),
    texts.does(grade),
    texts.holds({ min_depth_m, max_depth_m }, units),
    texts.red[grade.red],
    texts.convert,
    caution,
  ].map((text) => el("Description", {}, text));
}

const gamma = (style: "monCurveFwd" | "monCurveRev", exponent: number, offset: number): Element =>
  el(
    "Exponent",
    { ...depths, style },
    el("ExponentParams", { exponent: digits(exponent), offset: digits(offset) }),
  );

/** Samples of a curve that the format has no element of its own for. */
const SAMPLES = 1024;

/** From code values to light. The curve of ITU-R BT.709 has an element of its own. */
function decoded(curve: Transfer): Element[] {
  if (curve === "linear") return [];
  if (curve === "rec709") return [gamma("monCurveFwd", 1 / 0.45, 0.099)];
  const samples = Array.from({ length: SAMPLES }, (_, i) => digits(linearAt(curve, i / (SAMPLES - 1))));
  return [el("LUT1D", depths, el("Array", { dim: `${SAMPLES} 1` }, `\n${samples.join("\n")}\n`))];
}

/** What a picture holds. A matched grade goes beyond: its colours are those of things, not of a screen. */
const HELD = el(
  "Range",
  depths,
  el("minInValue", {}, "0"),
  el("maxInValue", {}, "1"),
  el("minOutValue", {}, "0"),
  el("maxOutValue", {}, "1"),
);

const row = (values: readonly number[]): string => values.map(digits).join(" ");

/** Slope, offset, power and saturation of the sliders, in linear light. */
function decisions({ edit: { black, gains, saturation } }: EditStart): {
  sop: Element[];
  saturation: Element;
} {
  return {
    sop: [
      el("Slope", {}, row(gains)),
      el("Offset", {}, row(gains.map((gain) => -gain * black))),
      el("Power", {}, "1 1 1"),
    ],
    saturation: el("SatNode", {}, el("Saturation", {}, digits(saturation))),
  };
}

function graded(grade: StartingGrade): Element {
  if (grade.finish === "basic_edit") {
    const { sop, saturation } = decisions(grade);
    return el("ASC_CDL", { ...depths, style: "FwdNoClamp" }, el("SOPNode", {}, ...sop), saturation);
  }
  const { matrix, offset } = grade;
  const rows = matrix.map((weights, k) => row([...weights, offset[k] ?? 0]));
  return el("Matrix", depths, el("Array", { dim: "3 4" }, `\n${rows.join("\n")}\n`));
}

/** As a process list of the Common LUT Format: from code values to linear light, graded there, and to the code values of sRGB. */
export function gradeClf(grade: StartingGrade, id: string, saying: Saying): string {
  const { texts, units } = saying;
  return (
    HEAD +
    write(
      el(
        "ProcessList",
        { compCLFversion: "3", id, name: texts.name(grade, units) },
        ...told(grade, saying),
        el("InputDescriptor", {}, texts.input(grade)),
        el("OutputDescriptor", {}, texts.output),
        ...decoded(grade.curve),
        graded(grade),
        ...(grade.finish === "basic_edit" ? [HELD] : []),
        gamma("monCurveRev", 2.4, 0.055),
      ),
    )
  );
}

/** The sliders as one color correction. It is for linear light, before which the recording is decoded. */
export function gradeCdl(grade: EditStart, id: string, saying: Saying): string {
  const { sop, saturation } = decisions(grade);
  return (
    HEAD +
    write(
      el(
        "ColorCorrection",
        { id, xmlns: "urn:ASC:CDL:v1.2" },
        ...told(grade, saying),
        el("InputDescription", {}, saying.texts.linear),
        el("SOPNode", {}, ...sop),
        saturation,
      ),
    )
  );
}
