import { type Form, maxErrors } from "@sunfathom/contract";
import { nearest } from "../validate/nearest.js";

/** Fields of an answer, each whole or some of what is in it. */
export interface Selection {
  readonly [name: string]: true | Selection;
}

/** A name that is none of an answer's fields. */
export interface UnknownField {
  name: string;
  /** The field that was most likely meant. */
  near: string | undefined;
}

/**
 * Looks up dotted names, `depths.red_loss_stops.likely` for instance; what is in a list goes by the list's name.
 * @param form of the answer
 * @param always names that are selected in any case
 * @returns the selection, or the names that the answer does not have
 */
export function selectionOf(
  names: readonly string[],
  form: Form,
  always: readonly string[],
): { selection: Selection } | { unknown: UnknownField[] } {
  const selection: Tree = new Map();
  const unknown: UnknownField[] = [];
  for (const name of [...names, ...always]) {
    const parts = name.split(".");
    // As many as a problem lists: what each was meant to be takes long to find out.
    if (unknown.length >= maxErrors) break;
    const missing = firstUnknown(parts, form);
    if (missing === undefined) add(selection, parts);
    else unknown.push({ name, near: missing.near });
  }
  return unknown.length > 0 ? { unknown } : { selection: asSelection(selection) };
}

type Tree = Map<string, Tree | true>;

function add(tree: Tree, [first = "", ...rest]: readonly string[]): void {
  const known = tree.get(first);
  // A field that is asked for whole stays whole.
  if (known === true) return;
  if (rest.length === 0) {
    tree.set(first, true);
    return;
  }
  const inner: Tree = known ?? new Map();
  tree.set(first, inner);
  add(inner, rest);
}

function asSelection(tree: Tree): Selection {
  return Object.fromEntries(
    [...tree].map(([name, inner]) => [name, inner === true ? inner : asSelection(inner)]),
  );
}

/** @returns undefined where the form has all parts, one in the other */
function firstUnknown(parts: readonly string[], form: Form): { near: string | undefined } | undefined {
  let within = form;
  for (const [index, part] of parts.entries()) {
    const fields = fieldsOf(within);
    const inner = fields.get(part);
    if (inner === undefined) {
      const near = nearest(part, fields.keys());
      return { near: near === undefined ? undefined : [...parts.slice(0, index), near].join(".") };
    }
    within = inner;
  }
  return undefined;
}

/** The fields of an object, or of the objects of a list. */
function fieldsOf(form: Form): ReadonlyMap<string, Form> {
  if (isList(form)) return fieldsOf(form[0]);
  if (typeof form !== "object") return new Map();
  return new Map(Object.entries(form).map(([name, inner]) => [name.replace(/\?$/, ""), inner]));
}

function isList(form: Form): form is readonly [Form] {
  return Array.isArray(form);
}
