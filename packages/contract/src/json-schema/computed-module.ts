import { components } from "../components.js";
import { answerNames, resolvedNames, sceneNames } from "../computed.js";
import { mountingInSceneFields } from "../scene/mounting/in-scene.js";
import { compact } from "./compact.js";
import { componentSchemas } from "./convert.js";
import { type Form, formOf } from "./form.js";
import { type JsonSchema, referenced } from "./schema.js";

/**
 * The text of `src/generated/computed.ts`: what it takes to check a scene and to shape an answer, and no more, so that
 * whoever computes without a service downloads little. Each scene and each answer is a constant of its own, so that who
 * computes one kind of answer carries no other's.
 */
export function computedModule(): string {
  const schemas = plainSchemas(componentSchemas(components));
  const constants = reachable(checkedNames, schemas).map((name) => {
    const schema = withoutAnswers(compact(schemaOf(name, schemas)));
    // Where a schema is used that has a name, its constant stands.
    const text = JSON.stringify(schema).replace(/\{"\$ref":"(\w+)#"\}/g, "$1Schema");
    return `const ${name}Schema: JsonSchema = ${text};`;
  });
  const scenes = checkedNames.map(
    (name) => `export const ${constantOf(name)}Schema: JsonSchema = ${name}Schema;`,
  );
  // The same for objects.
  const named = (name: string): Form => {
    const form = formOf(schemaOf(name, schemas), named);
    return typeof form === "object" ? { [`@${name}`]: 0 } : form;
  };
  const forms = reachable(answerNames, schemas).flatMap((name) => {
    const form = formOf(schemaOf(name, schemas), named);
    const text = JSON.stringify(form).replace(/\{"@(\w+)":0\}/g, "$1");
    return typeof form === "object" ? [`const ${name}: FormFields = ${text};`] : [];
  });
  const answers = answerNames.map(
    (name) => `export const ${camel(name)}Form: AnswerForm = { component: "${name}", form: ${name} };`,
  );
  const resolved = resolvedNames.map((name) => `export const ${constantOf(name)}Form: FormFields = ${name};`);
  return [
    "// Generated from the zod schemas by `npm run generate`. Never edit it.",
    'import type { AnswerForm } from "../computed.js";',
    'import type { FormFields } from "../json-schema/form.js";',
    'import type { JsonSchema } from "../json-schema/schema.js";',
    "",
    ...constants,
    "",
    ...scenes,
    "",
    ...forms,
    "",
    ...resolved,
    "",
    ...answers,
    "",
  ].join("\n");
}

/** What comes in: scenes, and many of them at once. */
const checkedNames = [...sceneNames, "BatchRequest"] as const;

/** Scenes of light, of which most say nothing of what a filter is mounted on. */
const LIGHT = ["Scene", "ResolvedScene"] as const;
const isMounting = (name: string): boolean => name in mountingInSceneFields;

/** Some fields of a schema. */
const having = ({ properties = {}, ...schema }: JsonSchema, kept: (name: string) => boolean): JsonSchema => ({
  ...schema,
  properties: Object.fromEntries(Object.entries(properties).filter(([name]) => kept(name))),
});

/** All schemas, scenes of light without what a filter is mounted on. */
function plainSchemas(schemas: Readonly<Record<string, JsonSchema>>): Readonly<Record<string, JsonSchema>> {
  const plain = LIGHT.map((name) => [name, having(schemaOf(name, schemas), (field) => !isMounting(field))]);
  return { ...schemas, ...Object.fromEntries(plain) };
}

/**
 * The text of `src/generated/mounted-on.ts`: what scenes of light say of what a filter is mounted on. Apart, and with nothing of the plain
 * ones in it: a page loads it where a scene says anything of it.
 */
export function mountedOnModule(): string {
  const schemas: Readonly<Record<string, JsonSchema>> = componentSchemas(components);
  const inFull = (schema: JsonSchema): JsonSchema => {
    const { $ref, items, properties, ...kept } =
      schema.$ref === undefined ? schema : schemaOf(referenced(schema.$ref), schemas);
    return {
      ...kept,
      ...(items === undefined ? {} : { items: inFull(items) }),
      ...(properties === undefined
        ? {}
        : {
            properties: Object.fromEntries(
              Object.entries(properties).map(([name, property]) => [name, inFull(property)]),
            ),
          }),
    };
  };
  const [scene, resolved] = LIGHT.map((name) => inFull(having(schemaOf(name, schemas), isMounting)));
  const { properties } = withoutAnswers(compact(scene ?? {}));
  const form = formOf(resolved ?? {}, () => "text");
  return [
    "// Generated from the zod schemas by `npm run generate`. Never edit it.",
    'import type { FormFields } from "../json-schema/form.js";',
    'import type { JsonSchema } from "../json-schema/schema.js";',
    "",
    `export const mountedOnProperties: Readonly<Record<string, JsonSchema>> = ${JSON.stringify(properties)};`,
    `export const mountedOnForm: FormFields = ${JSON.stringify(form)};`,
    "",
  ].join("\n");
}

/** `plainScene` for `Scene`, which is a scene of light. */
const constantOf = (name: string): string =>
  LIGHT.some((light) => light === name) ? `plain${name}` : camel(name);

/** `filterChoiceAnswer` for `FilterChoiceAnswer`. */
function camel(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** The components that some of them refer to, and those themselves, each after all that it refers to. */
function reachable(names: readonly string[], schemas: Readonly<Record<string, JsonSchema>>): string[] {
  const found = new Set<string>();
  const visit = (name: string) => {
    if (found.has(name)) return;
    for (const used of referencesIn(schemaOf(name, schemas))) visit(used);
    found.add(name);
  };
  names.forEach(visit);
  return [...found];
}

function referencesIn(schema: JsonSchema): string[] {
  const parts = [
    ...Object.values(schema.properties ?? {}),
    ...(schema.items === undefined ? [] : [schema.items]),
  ];
  return [...(schema.$ref === undefined ? [] : [referenced(schema.$ref)]), ...parts.flatMap(referencesIn)];
}

/**
 * A schema without what matters to answers alone, without defaults, which are filled in elsewhere, and without the unit of
 * numbers that have none.
 */
function withoutAnswers({
  default: _,
  "x-decimals": __,
  "x-unit": unit,
  items,
  properties,
  ...kept
}: JsonSchema): JsonSchema {
  return {
    ...kept,
    ...(unit === undefined || unit === "1" ? {} : { "x-unit": unit }),
    ...(items === undefined ? {} : { items: withoutAnswers(items) }),
    ...(properties === undefined
      ? {}
      : {
          properties: Object.fromEntries(
            Object.entries(properties).map(([name, property]) => [name, withoutAnswers(property)]),
          ),
        }),
  };
}

function schemaOf(name: string, schemas: Readonly<Record<string, JsonSchema>>): JsonSchema {
  const schema = schemas[name];
  if (schema === undefined) throw new Error(`There is no component ${name}.`);
  return schema;
}
