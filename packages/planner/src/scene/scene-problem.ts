/** What is wrong with one field of a scene. */
export interface FieldProblem {
  /** Field name, as in the scene. */
  field: string;
  /** What is wrong. */
  message: string;
  /** What is allowed, or what to do. */
  allowed: string;
}

/** Thrown where a scene is well formed but lies outside what the model can answer. */
export class SceneProblem extends Error {
  override readonly name = "SceneProblem";
  constructor(
    /** Stable code, for example `sun_too_low`. */
    readonly code: string,
    message: string,
    readonly fields: FieldProblem[],
  ) {
    super(message);
  }
}
