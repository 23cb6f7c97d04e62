import { type ComponentName, type JsonSchema, referenced, wireSchemas } from "@sunfathom/contract";
import { round } from "./round.js";

/** The value in the form in which it leaves. */
export type Shape = (value: unknown) => unknown;

const shapes = new Map<string, Shape>();

/**
 * Puts an answer into the form that the contract declares: fields in its order, numbers to its decimals.
 * @returns a function that throws where an answer does not hold what the contract says, or holds more: then the
 * program is wrong, and nothing may leave half right
 */
export function shapeOf(component: ComponentName): Shape {
  return shapeOfName(component);
}

function shapeOfName(name: string): Shape {
  const known = shapes.get(name);
  if (known !== undefined) return known;
  const schema = Object.hasOwn(wireSchemas, name) ? wireSchemas[name as ComponentName] : undefined;
  if (schema === undefined) throw new Error(`The contract has no component ${name}.`);
  const shape = compile(schema, name);
  shapes.set(name, shape);
  return shape;
}

function compile(schema: JsonSchema, path: string): Shape {
  if (schema.$ref !== undefined) return shapeOfName(referenced(schema.$ref));
  switch (schema.type) {
    case "object":
      return object(schema, path);
    case "array":
      return list(schema, path);
    case "number":
    case "integer":
      return number(schema, path);
    case "string":
    case "boolean":
      return scalar(schema.type, path);
    default:
      throw new Error(`${path} has no type.`);
  }
}

function object(schema: JsonSchema, path: string): Shape {
  const required = new Set(schema.required ?? []);
  const fields = Object.entries(schema.properties ?? {}).map(([name, property]) => ({
    name,
    shape: compile(property, `${path}/${name}`),
    isRequired: required.has(name),
  }));
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

function list(schema: JsonSchema, path: string): Shape {
  if (schema.items === undefined) throw new Error(`${path} says nothing of its items.`);
  const shape = compile(schema.items, `${path}/items`);
  return (value) => {
    if (!Array.isArray(value)) throw misfit(path, "a list");
    return value.map((item) => shape(item));
  };
}

function number(schema: JsonSchema, path: string): Shape {
  const decimals = schema["x-decimals"];
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

function misfit(path: string, wanted: string): Error {
  return new Error(`An answer does not keep the contract: ${path} must be ${wanted}.`);
}
