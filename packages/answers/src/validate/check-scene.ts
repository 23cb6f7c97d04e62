import type { FieldError, Rule } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { type Finding, Findings } from "./findings.js";
import { topLevelName } from "./pointer.js";

/** Fields that rules concern, by code. */
export type Concerns = Readonly<Record<string, readonly string[]>>;

export type Checked<Wire> = { scene: Wire } | { findings: Findings };

/**
 * Checks a scene from outside against its schema and then against the rules between its fields, and reports all that
 * is wrong at once. A rule is not asked about fields that are not well formed, or that a misspelt name or one in another
 * unit was meant for; none is asked where more is wrong than is listed, as fields behind that have not been looked at.
 * @param check that a scene passes when it is a `Wire`
 * @param rules between its fields
 * @param concerns fields that each of them concerns, by its code
 * @param found errors that reading the request has already met
 */
export function checkScene<Wire>(
  { check, rules, concerns }: { check: Check; rules: readonly Rule<Wire>[]; concerns: Concerns },
  raw: unknown,
  found: readonly FieldError[],
): Checked<Wire> {
  const findings = new Findings(found);
  check(raw, "", findings);
  // What is no object at all has no fields to ask about.
  if (findings.more || findings.pointers.includes("")) return { findings };
  const scene = raw as Wire;
  const troubled = new Set<string | undefined>([...findings.pointers.map(topLevelName), ...findings.meant]);
  for (const { code, violations } of rules) {
    if (concerns[code]?.some((field) => troubled.has(field))) continue;
    // A rule's violations have the parameters of its own code.
    for (const broken of violations(scene)) findings.add(() => ({ ...broken, code }) as Finding);
  }
  return findings.none ? { scene } : { findings };
}
