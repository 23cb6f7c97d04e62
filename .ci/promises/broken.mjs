// Which promises a description no longer keeps. What is taken may only grow wider, what is given only fuller: a client that was written
// against the kept promises must go on working.

/** @typedef {import("./promised.mjs").Promises} Promises */
/** @typedef {import("./promised.mjs").Schema} Schema */

/** @param {Promises} kept @param {Promises} now @returns {string[]} one sentence for each that is broken */
export function broken(kept, now) {
  /** @type {string[]} */
  const faults = [];
  for (const [name, was] of Object.entries(kept.operations)) {
    const is = now.operations[name];
    if (is === undefined) {
      faults.push(`${name} is gone`);
      continue;
    }
    for (const parameter of was.takes)
      if (!is.takes.includes(parameter)) faults.push(`${name} no longer takes ${parameter}`);
    for (const parameter of is.needs)
      if (!was.needs.includes(parameter)) faults.push(`${name} now needs ${parameter}`);
    if (was.body && is.body) faults.push(...taking(was.body, is.body, `${name} body`));
    else if (is.body || was.body) faults.push(`${name} ${is.body ? "now has" : "no longer has"} a body`);
    for (const [status, contents] of Object.entries(was.gives))
      for (const [type, schema] of Object.entries(contents)) {
        const given = is.gives[status]?.[type];
        if (given === undefined) faults.push(`${name} no longer gives ${type} with ${status}`);
        else faults.push(...giving(schema, given, `${name} ${status}`));
      }
  }
  for (const part of /** @type {const} */ (["parameters", "taken"])) {
    for (const [name, was] of Object.entries(kept[part])) {
      const is = now[part][name];
      if (is !== undefined) faults.push(...taking(was, is, name));
    }
  }
  for (const [name, was] of Object.entries(kept.given)) {
    const is = now.given[name];
    if (is !== undefined) faults.push(...giving(was, is, name));
  }
  return faults;
}

/** Bounds that must not come closer together. */
const least = /** @type {const} */ (["minimum", "minLength", "minItems"]);
const most = /** @type {const} */ (["maximum", "maxLength", "maxItems"]);

/** @param {Schema} was @param {Schema} is @param {string} where @returns {string[]} where a request that was taken may be refused */
function taking(was, is, where) {
  const faults = alike(was, is, where);
  for (const word of least)
    if (is[word] !== undefined && !(is[word] <= (was[word] ?? Number.NEGATIVE_INFINITY)))
      faults.push(`${where}: ${word} of ${is[word]}, before ${was[word] ?? "none"}`);
  for (const word of most)
    if (is[word] !== undefined && !(is[word] >= (was[word] ?? Number.POSITIVE_INFINITY)))
      faults.push(`${where}: ${word} of ${is[word]}, before ${was[word] ?? "none"}`);
  if (is.enum !== undefined)
    faults.push(...beyond(was.enum, is.enum).map((value) => `${where}: no longer takes ${value}`));
  if (is.pattern !== undefined && is.pattern !== was.pattern) faults.push(`${where}: another pattern`);
  for (const name of is.required ?? [])
    if (!(was.required ?? []).includes(name)) faults.push(`${where}: now needs ${name}`);
  return [...faults, ...within(was, is, where, taking)];
}

/** @param {Schema} was @param {Schema} is @param {string} where @returns {string[]} where an answer may no longer be read */
function giving(was, is, where) {
  const faults = alike(was, is, where);
  if (was.enum !== undefined) {
    const further = beyond(is.enum, was.enum);
    faults.push(...further.map((value) => `${where}: may now be ${value}, and its list was closed`));
  }
  for (const name of was.required ?? [])
    if (!(is.required ?? []).includes(name)) faults.push(`${where}: ${name} may now be missing`);
  return [...faults, ...within(was, is, where, giving)];
}

/** @param {unknown[] | undefined} values any at all where undefined @param {unknown[]} list @returns {unknown[]} those that it lacks */
const beyond = (values, list) => values?.filter((value) => !list.includes(value)) ?? ["any other"];

/** @param {Schema} was @param {Schema} is @param {string} where @returns {string[]} */
function alike(was, is, where) {
  return /** @type {const} */ (["type", "ref", "format", "const"])
    .filter((word) => was[word] !== is[word])
    .map((word) => `${where}: ${word} ${is[word] ?? "none"}, before ${was[word] ?? "none"}`);
}

/**
 * @param {Schema} was @param {Schema} is @param {string} where
 * @param {(was: Schema, is: Schema, where: string) => string[]} compare
 * @returns {string[]}
 */
function within(was, is, where, compare) {
  const faults = [];
  for (const [name, property] of Object.entries(was.properties ?? {})) {
    const still = is.properties?.[name];
    if (still === undefined) faults.push(`${where}: ${name} is gone`);
    else faults.push(...compare(property, still, `${where}.${name}`));
  }
  if (was.items) faults.push(...compare(was.items, is.items ?? {}, `${where}[]`));
  for (const [nth, part] of (was.anyOf ?? []).entries())
    faults.push(...compare(part, is.anyOf?.[nth] ?? {}, `${where} (${nth + 1})`));
  return faults;
}
