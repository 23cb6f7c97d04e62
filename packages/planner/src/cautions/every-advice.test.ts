/** Whatever advises a light, a depth on the way up, a balance, coming closer or changing a filter has its caution in the same answer. */
import { describe, expect, it } from "vitest";
import { attenuation } from "../attenuation/attenuation.js";
import { colourRecovery } from "../colour-recovery/colour-recovery.js";
import { diveAdvice } from "../dive-advice/dive-advice.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { filterMounting } from "../filter-mounting/filter-mounting.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { whiteBalance } from "../white-balance/white-balance.js";
import { ASKED, MOUNTED, SCENES } from "./advice-scenes.test-support.js";
import { CLASSIFIED, type Classified } from "./classified.test-support.js";
import type { Advised } from "./classified-reasons.test-support.js";

type Kind = keyof Classified;
/** What one answer says, by kind of text and code, and the cautions that it carries. */
interface Said {
  from: string;
  daylight_basis?: Scene["daylight_basis"];
  overhead?: Scene["overhead"];
  codes: [Kind, string][];
  cautions: string[];
}

const UNREACHABLE: Readonly<Record<string, string>> = {
  lamp_offset:
    "Doubt is told of light on the subject and between the channels; this cause bears on backscatter alone.",
};

const codesOf = (said: readonly { code: string }[]): string[] => said.map(({ code }) => code);

const told = (
  from: string,
  answer: Record<"reasons" | "cautions" | "uncertainty", readonly { code: string }[]>,
  codes: [Kind, string][],
  reasons: Kind = "reasons",
): Said => ({
  from,
  codes: [
    ...codes,
    ...answer.reasons.map(({ code }): [Kind, string] => [
      code in CLASSIFIED.mountingReasons ? "mountingReasons" : reasons,
      code,
    ]),
    ...answer.uncertainty.map(({ code }): [Kind, string] => ["causes", code]),
  ],
  cautions: answer.cautions.map(({ code }) => code),
});

function saidTo(scene: Scene): Said[] {
  const exposure = exposureLoss(scene);
  const mixed = mixedLight(scene);
  const balance = whiteBalance(scene);
  const dive = diveAdvice(scene);
  const kinds = (kind: Kind, codes: readonly string[]) => codes.map((code): [Kind, string] => [kind, code]);
  return [
    told("attenuation", attenuation(scene), []),
    told("filter-choice", filterChoice(scene), []),
    told("colour-recovery", colourRecovery(scene), []),
    told(
      "exposure-loss",
      exposure,
      kinds(
        "waysToPay",
        exposure.depths.flatMap(({ ways_to_pay }) => ways_to_pay.map(({ way }) => way)),
      ),
    ),
    told(
      "mixed-light",
      mixed,
      kinds(
        "waysOut",
        mixed.depths.flatMap(({ ways_out }) => ways_out.map(({ way }) => way)),
      ),
    ),
    told("white-balance", balance, kinds("balanceSteps", codesOf(balance.procedure))),
    told("dive-advice", dive, [
      ...kinds("steps", codesOf(dive.steps)),
      ...kinds("lampPlans", [dive.lamp_plan]),
      ...kinds("take", codesOf(dive.take)),
    ]),
  ];
}

const advisedBy = (kind: Kind, code: string): readonly Advised[] =>
  (CLASSIFIED[kind] as Readonly<Record<string, readonly Advised[]>>)[code] ?? [];

const everything: readonly Said[] = [
  ...SCENES.flatMap((scene) =>
    saidTo(scene).map((said) => ({
      ...said,
      daylight_basis: scene.daylight_basis,
      ...(scene.overhead ? { overhead: scene.overhead } : {}),
    })),
  ),
  ...MOUNTED.map((scene) => {
    const answer = filterMounting(scene);
    const steps = codesOf(answer.procedure);
    return told(
      "filter-mounting",
      answer,
      steps.map((code): [Kind, string] => ["mountingSteps", code]),
    );
  }),
];

describe("every code that advises what calls for a caution", () => {
  const advising = (Object.keys(CLASSIFIED) as Kind[]).flatMap((kind) =>
    Object.entries(CLASSIFIED[kind])
      .filter(([, advised]) => advised.length > 0)
      .map(([code, advised]) => ({ kind, code, advised: advised as readonly Advised[] })),
  );

  it.each(advising.filter(({ code }) => !(code in UNREACHABLE)))(
    "$kind $code: in each answer that says it",
    ({ kind, code, advised }) => {
      const saying = everything.filter(({ codes }) => codes.some(([k, c]) => k === kind && c === code));
      expect(saying.length, "no scene reaches it").toBeGreaterThan(0);
      for (const { from, cautions } of saying) {
        for (const advice of advised) {
          const given = ASKED[advice].some((codes) => codes.every((asked) => cautions.includes(asked)));
          expect(
            given,
            `${from}: ${code} advises ${advice}, and the cautions are ${cautions.join(", ")}`,
          ).toBe(true);
        }
      }
    },
  );
});

it("every code that is said is judged", () => {
  const judged = new Set(
    (Object.keys(CLASSIFIED) as Kind[]).flatMap((kind) =>
      Object.keys(CLASSIFIED[kind]).map((code) => `${kind} ${code}`),
    ),
  );
  const said = new Set(everything.flatMap(({ codes }) => codes.map(([kind, code]) => `${kind} ${code}`)));
  expect([...said].filter((code) => !judged.has(code))).toEqual([]);
});

it("every answer without daylight, or under a roof, says what a roof over the diver asks for, and no other does", () => {
  for (const { from, daylight_basis, overhead = "none", cautions } of everything) {
    expect(cautions.includes("overhead_by_training"), from).toBe(
      daylight_basis === "none" || overhead !== "none",
    );
  }
});

it("an answer to one question gives no caution on coming closer or on the way up that nothing in it asks for", () => {
  // A dive's advice has all cautions of the decisions behind it.
  for (const { from, codes, cautions } of everything.filter(({ from }) => from !== "dive-advice")) {
    const asked = new Set(codes.flatMap(([kind, code]) => advisedBy(kind, code)));
    if (!asked.has("closer")) expect(cautions, from).not.toContain("closer_under_control");
    if (!asked.has("way_up") && from !== "white-balance")
      expect(cautions, from).not.toContain("ascent_first");
  }
});
