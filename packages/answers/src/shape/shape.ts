import {
  type AnswerForm,
  type ComponentName,
  type Form,
  type FormFields,
  formOf,
  wireSchemas,
} from "@sunfathom/contract";
import { round } from "./round.js";

/** The value in the form in which it leaves. */
export type Shape = (value: unknown) => unknown;

const shapes = new Map<string, Shape>();

/**
 * Puts an answer into the form that the contract declares: fields in its order, numbers to its decimals.
 * @returns a function that throws where an answer does not hold what the contract says, or holds more: then the
 * program is wrong, and nothing may leave half right
 */
export function shapeOfAnswer({ component, form }: AnswerForm): Shape {
  return once(component, () => form);
}

/** The same for any component of the contract. Who shapes nothing but computed answers carries less. */
export function shapeOf(name: ComponentName): Shape {
  return once(name, () => formOfComponent(name));
}

function formOfComponent(name: string): Form {
  const schema = Object.hasOwn(wireSchemas, name) ? wireSchemas[name as ComponentName] : undefined;
  if (schema === undefined) throw new Error(`The contract has no component ${name}.`);
  return formOf(schema, formOfComponent);
}

function once(name: string, form: () => Form): Shape {
  const known = shapes.get(name);
  if (known !== undefined) return known;
  const shape = compile(form(), name);
  shapes.set(name, shape);
  return shape;
}

function compile(form: Form, path: string): Shape {
  if (typeof form === "number") return number(form, path);
  if (form === "number") return number(undefined, path);
  if (form === "text") return scalar("string", path);
  if (form === "flag") return scalar("boolean", path);
  if (form === "open") return open(path);
  return isList(form) ? list(form[0], path) : object(form, path);
}

/** `Array.isArray` does not know lists that are read only. */
export function isList(form: readonly [Form] | FormFields): form is readonly [Form] {
  return Array.isArray(form);
}

function object(form: FormFields, path: string): Shape {
  const fields = Object.entries(form).map(([marked, part]) => {
    const isRequired = !marked.endsWith("?");
    const name = isRequired ? marked : marked.slice(0, -1);
    return { name, shape: compile(part, `${path}/${name}`), isRequired };
  });
  return (value) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) throw misfit(path, "an object");
    const source = value as Record<string, unknown>;
    const target: Record<string, unknown> = {};
    let taken = 0;
    for (const { name, shape, isRequired } of fields) {
      const field = source[name];
      if (field !== undefined) {
        target[name] = shape(field);
        taken += 1;
      } else if (isRequired) throw misfit(`${path}/${name}`, "there");
    }
    if (taken !== countDefined(source)) throw misfit(path, "without fields that the contract does not have");
    return target;
  };
}

function countDefined(source: Record<string, unknown>): number {
  let count = 0;
  for (const name in source) if (source[name] !== undefined) count += 1;
  return count;
}

function list(form: Form, path: string): Shape {
  const shape = compile(form, `${path}/items`);
  return (value) => {
    if (!Array.isArray(value)) throw misfit(path, "a list");
    return value.map((item) => shape(item));
  };
}

function number(decimals: number | undefined, path: string): Shape {
  return (value) => {
    if (typeof value !== "number" || !Number.isFinite(value)) throw misfit(path, "a finite number");
    return decimals === undefined ? value : round(value, decimals);
  };
}

function scalar(type: "string" | "boolean", path: string): Shape {
  return (value) => {
    if (typeof value !== type) throw misfit(path, `a ${type}`);
    return value;
  };
}

/** Decimals of numbers that the contract does not know one by one: none is needed finer. */
export const OPEN_DECIMALS = 6;

/** What the contract leaves open: texts, numbers, yes or no, and lists and objects of these. */
function open(path: string): Shape {
  const toNumber = number(OPEN_DECIMALS, path);
  const shape: Shape = (value) => {
    if (typeof value === "string" || typeof value === "boolean") return value;
    if (Array.isArray(value)) return value.map(shape);
    if (typeof value !== "object" || value === null) return toNumber(value);
    const fields = Object.entries(value).filter(([, field]) => field !== undefined);
    return Object.fromEntries(fields.map(([name, field]) => [name, shape(field)]));
  };
  return shape;
}

export function misfit(path: string, wanted: string): Error {
  return new Error(`An answer does not keep the contract: ${path} must be ${wanted}.`);
}
