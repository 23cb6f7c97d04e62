import type { z } from "zod/v3";
import { ignoreOverride, zodToJsonSchema } from "zod-to-json-schema";
import { annotationOf } from "../field/annotation.js";
import { guard } from "./guard.js";
import { type JsonSchema, reference } from "./schema.js";

/**
 * JSON Schemas of `components`, each complete in itself but for references to the others, which stand wherever a
 * component's zod schema is used. This is the only code that knows the converter.
 * @throws where a schema came out empty or with a keyword that the contract does not know
 */
export function componentSchemas(
  components: Readonly<Record<string, z.ZodTypeAny>>,
): Record<string, JsonSchema> {
  const known: Known = new Map(
    Object.entries(components).map(([name, { _def }]) => [identity(_def), { name, def: _def }]),
  );
  return Object.fromEntries(
    Object.entries(components).map(([name, schema]) => [name, convert(name, schema, known)]),
  );
}

type Known = ReadonlyMap<unknown, { name: string; def: z.ZodTypeDef }>;

function convert(name: string, schema: z.ZodTypeAny, known: Known): JsonSchema {
  const converted: unknown = zodToJsonSchema(schema, {
    $refStrategy: "none",
    // Answers may grow: only what is declared strict refuses further fields.
    removeAdditionalStrategy: "strict",
    allowedAdditionalProperties: undefined,
    override: (def, refs) => {
      const isRoot = refs.currentPath.length === 1;
      const used = known.get(identity(def));
      if (isRoot || used === undefined) return ignoreOverride;
      const own = used.def === def ? {} : { ...described(def), ...extras(def) };
      return { $ref: reference(used.name), ...own };
    },
    postProcess: (json, def) => (json === undefined ? json : { ...json, ...extras(def) }),
  });
  const { $schema: _, ...component } = converted as JsonSchema & { $schema?: string };
  guard(component, name);
  return component;
}

/** What stays the same when a schema gets another description. */
function identity(def: z.ZodTypeDef & { shape?: unknown; values?: unknown }): unknown {
  return def.shape ?? def.values ?? def;
}

function described({ description }: z.ZodTypeDef): JsonSchema {
  return description === undefined ? {} : { description };
}

function extras(def: z.ZodTypeDef): JsonSchema {
  const { unit, decimals, default: fallback, examples } = annotationOf(def) ?? {};
  return {
    ...(fallback === undefined ? {} : { default: fallback }),
    ...(examples === undefined ? {} : { examples }),
    ...(unit === undefined ? {} : { "x-unit": unit }),
    ...(decimals === undefined ? {} : { "x-decimals": decimals }),
  };
}
