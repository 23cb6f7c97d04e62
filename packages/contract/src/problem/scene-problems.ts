/** The kinds of problem that a scene itself can have: also who computes without a service meets them. */
export const sceneProblemKinds = {
  invalid_scene: { status: 400, title: "The scene is not valid." },
  model_version_mismatch: { status: 409, title: "The model has another version." },
  outside_the_model: { status: 422, title: "The scene is valid, but outside what the model can answer." },
} as const;

export type SceneProblemCode = keyof typeof sceneProblemKinds;

/** The `type` of a problem: a reference that resolves against the service that answered. */
export function problemType(code: string): string {
  return `/problems/${code.replaceAll("_", "-")}`;
}
