import type { Form, FormFields } from "@sunfathom/contract";
import { plain } from "./fields.js";

/** The value of a field: the given one, or else its default, of which note is taken. */
export type Assume = <T>(value: T | undefined, fallback: T, name: string) => T;

/** Notes the names of fields that a default filled in. */
export function assuming(assumed: string[]): Assume {
  return (value, fallback, name) => {
    if (value !== undefined) return plain(value);
    assumed.push(name);
    return fallback;
  };
}

/** Fields that are not simply as given or by default: each gives what comes of it, in place of itself. */
export type OwnFields<Wire> = Readonly<Record<string, (wire: Wire, assume: Assume) => object>>;

/** What to know of an object to bring it into its one form. */
interface Ways<Wire> {
  /** Fields in their order, as the resolved object has them. */
  form: FormFields;
  /** What fields are taken to be where they were left out. */
  defaults: Readonly<Record<string, unknown>>;
  own: OwnFields<Wire>;
}

/**
 * Brings objects into their one form: the fields of `form`, in its order, as given or by default, and none that is neither.
 * Lists and what is in them follow the form too, so that a further field of the contract needs no line here.
 */
export function oneForm<Wire extends object>({ form, defaults, own }: Ways<Wire>) {
  const fields = fieldsOf(form);
  return (wire: Wire, assume: Assume): object => {
    const given = wire as Readonly<Record<string, unknown>>;
    const all: [string, unknown][] = [];
    for (const [name, of] of fields) {
      const made = own[name];
      if (made !== undefined) all.push(...Object.entries(made(wire, assume)));
      else if (given[name] !== undefined) all.push([name, ordered(given[name], of)]);
      else if (defaults[name] !== undefined) all.push([name, assume(undefined, defaults[name], name)]);
    }
    // No literal with spreads: see `joined`.
    return Object.fromEntries(all);
  };
}

/** By form, since a list may hold thousands of objects of one. */
const known = new WeakMap<FormFields, [string, Form][]>();

function fieldsOf(form: FormFields): [string, Form][] {
  const found = known.get(form);
  if (found !== undefined) return found;
  const fields = Object.entries(form).map(([key, of]): [string, Form] => [key.replace("?", ""), of]);
  known.set(form, fields);
  return fields;
}

/** A value with the fields of all objects in it in the order of `form`. */
function ordered(value: unknown, form: Form): unknown {
  if (typeof form !== "object") return plain(value);
  if (Array.isArray(value)) return value.map((item) => ordered(item, Array.isArray(form) ? form[0] : form));
  const given = value as Readonly<Record<string, unknown>>;
  const all: [string, unknown][] = [];
  for (const [name, of] of fieldsOf(form as FormFields))
    if (given[name] !== undefined) all.push([name, ordered(given[name], of)]);
  return Object.fromEntries(all);
}
