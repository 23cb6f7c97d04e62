/** @import { Schema, Way, Ways } from "./description.mjs" */

const helpers = `
/** Some fields of \`T\`, given. */
type Given<T, K extends keyof T> = { [P in K]-?: NonNullable<T[P]> };

/** Fields that do not go with what is given; compilers show why. */
type Without<K extends PropertyKey, Why extends string> = { [P in K]?: Why | undefined };
`;

/**
 * Where a component gives something in one of several ways (\`x-ways\`), its type becomes all of its fields, as
 * \`SceneFields\`, and under its own name what takes one way of each: a compiler then refuses what the service would.
 * @param {string} text types of all components
 * @param {Record<string, Schema>} schemas
 */
export function withWays(text, schemas) {
  const found = Object.entries(schemas).filter(([, schema]) => schema["x-ways"] !== undefined);
  const renamed = found.reduce((types, [name]) => {
    const before = `export type ${name} = {`;
    if (!types.includes(before)) throw new Error(`${name} has ways, but is no object.`);
    return types.replace(before, `export type ${name}Fields = {`);
  }, text);
  return (
    renamed +
    (found.length === 0 ? "" : helpers) +
    found.map(([name, schema]) => typesOf(name, schema)).join("")
  );
}

/** @param {string} component @param {Schema} schema */
function typesOf(component, schema) {
  const all = schema["x-ways"] ?? [];
  const fields = all.map(fieldsOf);
  const twice = fields.flat().find((field, index, every) => every.indexOf(field) !== index);
  if (twice !== undefined) throw new Error(`${component}.${twice} is part of two choices.`);
  const ofComponent = `${component}Fields`;
  const rest = `Omit<${ofComponent}, ${union(fields.flat())}>`;
  return [
    ...all.map(({ says }, index) => `\ntype ${why(component, index)} = ${JSON.stringify(says)};\n`),
    ...all.map(({ ways }, index) =>
      ways.map((way) => interfaceOf(way, fields[index] ?? [], ofComponent, why(component, index))).join(""),
    ),
    `\n/** The fields of a \`${component}\` that go with whatever else is given. */\nexport interface ${component}Rest extends ${rest} {}\n`,
    `\n/**\n * ${schema.description ?? component}\n *\n${all.map(({ says }) => ` * ${says}\n`).join("")} */\n`,
    `export type ${component} = ${component}Rest & ${all.map(({ ways }) => `(${ways.map(({ name }) => name).join(" | ")})`).join(" & ")};\n`,
  ].join("");
}

/** @param {string} component @param {number} index of its ways */
function why(component, index) {
  return `${component}Why${index + 1}`;
}

/**
 * @param {Way} way
 * @param {string[]} all fields of this and the other ways
 * @param {string} fields type of all fields
 * @param {string} why type of what is said where a field does not go with it
 */
function interfaceOf({ name, needs, takes, values = {} }, all, fields, why) {
  const others = all.filter((field) => !needs.includes(field) && !takes.includes(field));
  // Fields that decide are extended, too: so they keep their descriptions.
  const parts = [
    ...(needs.length > 0 ? [`Given<${fields}, ${union(needs)}>`] : []),
    ...(takes.length > 0 ? [`Pick<${fields}, ${union(takes)}>`] : []),
    ...(others.length > 0 ? [`Without<${union(others)}, ${why}>`] : []),
  ];
  const decided = Object.entries(values).map(([field, words]) =>
    needs.includes(field) ? `  ${field}: ${union(words)};\n` : `  ${field}?: ${union(words)} | undefined;\n`,
  );
  const body = decided.length === 0 ? "{}" : `{\n${decided.join("")}}`;
  const text = [
    ...(needs.length > 0 ? [`Given: ${quoted(needs)}.`] : [`None of ${quoted(others)}.`]),
    ...(takes.length > 0 ? [`Optional: ${quoted(takes)}.`] : []),
  ];
  return `\n/** ${text.join(" ")} */\nexport interface ${name}${parts.length === 0 ? "" : ` extends ${parts.join(", ")}`} ${body}\n`;
}

/** @param {Ways} of */
function fieldsOf({ ways }) {
  return [...new Set(ways.flatMap(({ needs, takes }) => [...needs, ...takes]))];
}

/** @param {string[]} names */
function quoted(names) {
  return names.map((name) => `\`${name}\``).join(", ");
}

/** @param {string[]} words */
function union(words) {
  return words.map((word) => JSON.stringify(word)).join(" | ");
}
