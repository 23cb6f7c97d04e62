import { wireSchemas } from "@sunfathom/contract";
import { Ajv } from "ajv";

/** Ajv, the independent reader of JSON Schema, with every component of the contract under its name. Tests only. */
export const contractAjv = new Ajv({ strict: true, allErrors: true, keywords: ["x-unit", "x-decimals"] });
for (const [name, schema] of Object.entries(wireSchemas)) contractAjv.addSchema({ ...schema, $id: name });
