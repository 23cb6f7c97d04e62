import { type Element, el, text } from "../xml/xml.js";

/** An outcome with the value that it has before anything was handed in. */
export const outcome = (
  identifier: string,
  baseType: "float" | "identifier",
  value: string,
  further: Readonly<Record<string, number>> = {},
): Element =>
  el(
    "outcomeDeclaration",
    { identifier, cardinality: "single", baseType, ...further },
    el("defaultValue", {}, el("value", {}, text(value))),
  );
