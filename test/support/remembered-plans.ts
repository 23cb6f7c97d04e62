// A plan has no language and no units: who holds one language or unit against another has each scene worked out once, and said as
// often as it takes.
type Plan = (scene: object, ...more: unknown[]) => unknown;

/** Names of the planner's functions that a calculation answers with. */
const plans = [
  "attenuation",
  "filterChoice",
  "exposureLoss",
  "mixedLight",
  "whiteBalance",
  "colourRecovery",
  "diveAdvice",
  "filterMounting",
] as const;

function remembered(plan: Plan): Plan {
  const known = new Map<string, () => unknown>();
  return (scene, ...more) => {
    // What else it takes is code, the same each time.
    const key = JSON.stringify(scene);
    let outcome = known.get(key);
    if (outcome === undefined) {
      outcome = outcomeOf(() => plan(scene, ...more));
      known.set(key, outcome);
    }
    return outcome();
  };
}

/** What it gives, or throws, as often as that is asked for. */
function outcomeOf(work: () => unknown): () => unknown {
  try {
    const value = work();
    return () => value;
  } catch (error) {
    return () => {
      throw error;
    };
  }
}

/** The planner, with plans that are worked out once for each scene. */
export function rememberingPlans(planner: Record<string, unknown>): Record<string, unknown> {
  const own = plans.map((name) => [name, remembered(planner[name] as Plan)]);
  return { ...planner, ...Object.fromEntries(own) };
}
