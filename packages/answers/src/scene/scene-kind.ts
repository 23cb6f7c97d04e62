import type { Rule, SceneSchemas } from "@sunfathom/contract";
import type { OutsideTexts } from "../problem/outside-the-model.js";

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
  /** What it must keep when it comes in. */
  schemas: SceneSchemas;
  /** What must hold between its fields. */
  rules: readonly Rule<Wire>[];
  /** Fields that mean nothing without a list, and so do not fit a query string either. */
  besideLists: readonly string[];
  /** The one form of a scene that has passed its schema and its rules: scenes that mean the same come out the same. */
  canonical: (wire: Wire) => Canonical<Own>;
  /** Texts for what the model can refuse of it. */
  outside: OutsideTexts;
  /** The name under which the caller gave what the planner calls `field`. */
  asAsked: (field: string, asked: Wire) => string;
}
