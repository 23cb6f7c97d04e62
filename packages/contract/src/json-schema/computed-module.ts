import { components } from "../components.js";
import { answerNames, sceneNames } from "../computed.js";
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
  const schemas: Readonly<Record<string, JsonSchema>> = componentSchemas(components);
  const constants = reachable(sceneNames, schemas).map((name) => {
    const schema = withoutAnswers(compact(schemaOf(name, schemas)));
    return `const ${name}Schema: JsonSchema = ${JSON.stringify(schema)};`;
  });
  const scenes = sceneNames.map((name) => {
    const parts = reachable([name], schemas).map((part) => `${part}: ${part}Schema`);
    const used = `{ ${parts.join(", ")} }`;
    return `export const ${camel(name)}Schemas: SceneSchemas = { component: "${name}", schemas: ${used} };`;
  });
  // Where an object is used that has a name, its constant stands.
  const named = (name: string): Form => {
    const form = formOf(schemaOf(name, schemas), named);
    return typeof form === "object" ? { [`@${name}`]: 0 } : form;
  };
  const forms = reachable(answerNames, schemas).flatMap((name) => {
    const form = formOf(schemaOf(name, schemas), named);
    const text = JSON.stringify(form).replace(/\{"@(\w+)":0\}/g, "$1");
    return typeof form === "object" ? [`const ${name}: Form = ${text};`] : [];
  });
  const answers = answerNames.map(
    (name) => `export const ${camel(name)}Form: AnswerForm = { component: "${name}", form: ${name} };`,
  );
  return [
    "// Generated from the zod schemas by `pnpm --filter @sunfathom/contract generate`. Never edit it.",
    'import type { AnswerForm, SceneSchemas } from "../computed.js";',
    'import type { Form } from "../json-schema/form.js";',
    'import type { JsonSchema } from "../json-schema/schema.js";',
    "",
    ...constants,
    "",
    ...scenes,
    "",
    ...forms,
    "",
    ...answers,
    "",
  ].join("\n");
}

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

/** A schema without what matters to answers alone, and without defaults, which are filled in elsewhere. */
function withoutAnswers({
  default: _,
  "x-decimals": __,
  items,
  properties,
  ...kept
}: JsonSchema): JsonSchema {
  return {
    ...kept,
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
