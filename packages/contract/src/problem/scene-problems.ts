/** The kinds of problem that a scene itself can have: also who computes without a service meets them. */
export const sceneProblemStatuses = {
  invalid_scene: 400,
  model_version_mismatch: 409,
  outside_the_model: 422,
} as const;

export type SceneProblemCode = keyof typeof sceneProblemStatuses;

/** The `type` of a problem: a reference that resolves against the service that answered. */
export function problemType(code: string): string {
  return `/problems/${code.replaceAll("_", "-")}`;
}
