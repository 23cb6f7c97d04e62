import type { FormFields, JsonSchema, Rule, SceneName } from "@sunfathom/contract";

/** A resolved scene of the contract as it is worked on: what is absent is absent, and what was assumed is noted apart. */
export type Echo<Resolved> = Present<Omit<Resolved, "assumed">>;

type Present<T> = T extends readonly (infer Item)[]
  ? Present<Item>[]
  : T extends object
    ? { [Name in keyof T]: Present<Exclude<T[Name], undefined>> }
    : T;

export interface Canonical<Own> {
  /** Every default filled in, fields in one fixed order, one form for what can be said in several. */
  scene: Own;
  /** Names of the fields that a default filled in, in the order of the scene. */
  assumed: string[];
}

/**
 * A kind of scene that calculations take, on its way from the caller's words to the planner's. Another one is one more of
 * these.
 */
export interface SceneKind<Wire, Own> {
  /** Its name among the components of the contract. */
  component: SceneName;
  /** What it must keep when it comes in. */
  schema: JsonSchema;
  /** What must hold between its fields. */
  rules: readonly Rule<Wire>[];
  /** Fields that mean nothing without a list, and so do not fit a query string either. */
  besideLists: readonly string[];
  /** The one form of a scene that has passed its schema and its rules: scenes that mean the same come out the same. */
  canonical: (wire: Wire) => Canonical<Own>;
  /** The form in which answers tell the scene, where it is not that of the answer's form. */
  resolved?: FormFields;
  /** The name under which the caller gave what the planner calls `field`. */
  asAsked: (field: string, asked: Wire) => string;
}
