import { type BatchRequest, type CalculationName, mostVaried, repeatedIds } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import type { Check } from "../validate/check.js";
import { Findings } from "../validate/findings.js";
import { nearest } from "../validate/nearest.js";
import { member, topLevelName } from "../validate/pointer.js";
import { wrongType } from "../validate/wrong-type.js";
import { type BatchPlan, planOf } from "./plan.js";

/** What a batch gives in place of items. */
const varying = ["operation", "scene", "vary"] as const;

/** A batch that is valid, or why it is not: what is wrong, or the version of the model that it expects. */
export type CheckedBatch = { plan: BatchPlan } | { findings: Findings } | { expected: string };

/**
 * Checks what holds a batch together, and leaves each scene for its own turn.
 * @param check that a body passes when it is a `BatchRequest`
 * @param fieldsOf names of the fields of a calculation's scenes
 */
export function checkBatch(
  raw: unknown,
  check: Check,
  fieldsOf: (operation: CalculationName) => readonly string[],
): CheckedBatch {
  const findings = new Findings();
  check(raw, "", findings);
  if (!findings.more && !findings.pointers.includes("")) checkParts(raw as BatchRequest, findings, fieldsOf);
  if (!findings.none) return { findings };
  const request = raw as BatchRequest;
  const { expect_model_version: expected = MODEL_VERSION } = request;
  return expected === MODEL_VERSION ? { plan: planOf(request) } : { expected };
}

/** What goes wrong between the parts of a batch; not asked of parts that are not well formed themselves. */
function checkParts(
  request: BatchRequest,
  findings: Findings,
  fieldsOf: (operation: CalculationName) => readonly string[],
): void {
  const troubled = new Set(findings.pointers.map(topLevelName));
  const isWell = (name: string) => !troubled.has(name);
  const { items, operation, vary } = request;
  checkWay(request, findings, isWell);
  if (items !== undefined && isWell("items"))
    for (const { pointer, parameters } of repeatedIds(items, "/items"))
      findings.add(() => ({ pointer, code: "batch_ids_unique", parameters }));
  if (vary !== undefined && isWell("vary")) {
    const names = operation !== undefined && isWell("operation") ? fieldsOf(operation) : undefined;
    checkVary(vary as readonly Record<string, unknown>[], names, findings);
  }
}

function checkWay(request: BatchRequest, findings: Findings, isWell: (name: string) => boolean): void {
  const given = varying.filter((name) => request[name] !== undefined);
  if (request.items !== undefined) {
    for (const name of given)
      findings.add(() => ({ pointer: `/${name}`, code: "batch_one_way", parameters: { name } }));
  } else if (given.length === 0 && ["items", ...varying].every(isWell)) {
    findings.add(() => ({ pointer: "", code: "batch_one_way", parameters: { name: "" } }));
  } else if (given.length > 0) {
    for (const name of varying.filter((one) => !given.includes(one)))
      findings.add(() => ({
        pointer: `/${name}`,
        code: "missing_field",
        parameters: { name, needed: varying },
      }));
  }
}

function checkVary(
  vary: readonly Readonly<Record<string, unknown>>[],
  names: readonly string[] | undefined,
  findings: Findings,
): void {
  const firsts = new Map<string, string>();
  let scenes = 1;
  let isWell = true;
  for (const [nth, entry] of vary.entries()) {
    const pointer = `/vary/${nth}`;
    for (const name of Object.keys(entry)) {
      const at = member(pointer, name);
      const first = firsts.get(name);
      if (first !== undefined)
        findings.add(() => ({ pointer: at, code: "vary_field_once", parameters: { name, first } }));
      else firsts.set(name, at);
      if (names?.includes(name) === false) unknownField(name, at, names, findings);
    }
    const length = checkValues(entry, pointer, findings);
    if (length === undefined) isWell = false;
    else scenes *= length;
  }
  if (isWell && scenes > mostVaried) {
    const parameters = { scenes, most: mostVaried };
    findings.add(() => ({ pointer: "/vary", code: "batch_size", parameters }));
  }
}

/** @returns how many values the fields of an entry have; undefined where they cannot go together */
function checkValues(
  entry: Readonly<Record<string, unknown>>,
  pointer: string,
  findings: Findings,
): number | undefined {
  const before = findings.list.length;
  let first: { name: string; length: number } | undefined;
  for (const [name, values] of Object.entries(entry)) {
    const at = member(pointer, name);
    if (!Array.isArray(values)) {
      findings.add(() => wrongType(values, at, { type: "list" }));
      continue;
    }
    const { length } = values;
    if (length === 0 || length > mostVaried) {
      const parameters = { of: "list", length, min_length: 1, max_length: mostVaried } as const;
      findings.add(() => ({ pointer: at, code: "wrong_length", parameters }));
      continue;
    }
    if (first === undefined) first = { name, length };
    else if (first.length !== length) {
      const parameters = { name, length, first: first.name, wanted: first.length };
      findings.add(() => ({ pointer: at, code: "vary_lengths_equal", parameters }));
    }
  }
  if (Object.keys(entry).length === 0)
    findings.add(() => ({ pointer, code: "vary_names_a_field", parameters: {} }));
  return findings.list.length === before && !findings.more ? first?.length : undefined;
}

/** Enough of a name to recognise it by. */
const shownLength = 64;

function unknownField(name: string, pointer: string, names: readonly string[], findings: Findings): void {
  findings.add(() => {
    const near = nearest(name, names);
    const shown = name.length > shownLength ? `${name.slice(0, shownLength)}...` : name;
    return {
      pointer,
      code: "unknown_field",
      parameters: { name: shown },
      allowed: near ?? names.join(", "),
      ...(near === undefined ? {} : { did_you_mean: near }),
    };
  });
}
