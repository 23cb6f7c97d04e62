import { besideSite, type FieldError, type Problem } from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import type { Ready, Refused } from "../operations/outcome.js";
import { problem } from "../problem/problem.js";
import type { Findings } from "../validate/findings.js";
import { member } from "../validate/pointer.js";

/** Notes what a site has that goes beside it. */
export function checkSite(site: object, pointer: string, findings: Findings, without = besideSite): void {
  for (const name of without)
    if (name in site)
      findings.add(() => ({ pointer: member(pointer, name), code: "site_field", parameters: { name } }));
}

/** What is wrong with a scene within a plan, told of the plan. @param pointer to the scene */
export function within(pointer: string, { problem: inner }: Refused, words: ProblemTexts): Problem {
  const errors = (inner.errors ?? []).map(
    (error): FieldError => ({ ...error, pointer: pointer + error.pointer }),
  );
  if (inner.code !== "invalid_scene") return { ...inner, errors };
  const [first, ...others] = errors;
  const told = first === undefined ? [] : [first, ...others];
  return problem("invalid_request", words, words.details.invalid({ errors: told, more: false }), told);
}

/** A site in its one form, without the daylight that stands in for every hour. */
export function siteTold({ canonical }: Ready): object {
  const {
    daylight_basis: _,
    sun_elevation_deg: __,
    cloud_oktas: ___,
    assumed = [],
    ...site
  } = JSON.parse(canonical) as Record<string, unknown> & { assumed?: string[] };
  const hidden = new Set<string>(besideSite);
  return { ...site, assumed: assumed.filter((name) => !hidden.has(name)) };
}
