/** How large a scene is, as far as that decides what its answer costs. */
export interface SceneSize {
  /** Depths at which the scene is computed: one, or seven of a range. */
  depths: number;
  /** How far the range reaches, m: the farther, the more often the camera is balanced. */
  range_m: number;
  lamps: number;
  /** Filters to choose from. */
  filters: number;
  /** How many of them are the caller's own. */
  owned: number;
  /** Stretches of the dive with and without the filter. */
  legs: number;
  /** Whether it says what its filters are mounted on. */
  mounted: boolean;
}

/**
 * What a calculation says of itself where a service describes and counts it, beside the calculation in its file. Whoever computes
 * without a service carries none of it.
 */
export interface About<ExampleName extends string = string> {
  summary: string;
  description: string;
  /** Names of scenes to try it with, of those that the contract has for its kind of scene. */
  examples: readonly ExampleName[];
  /** Fields of the answer that it comes down to, for those who ask for it in brief; dotted names. */
  brief: readonly string[];
  /** In units of about one attenuation at one depth: a fifth of a millisecond of one processor, about. */
  cost: (size: SceneSize) => number;
}
