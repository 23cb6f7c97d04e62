/**
 * At which of equally spaced depths to integrate, and how the others follow from those.
 *
 * The logarithm of what is left is smooth in depth and flattens with it, since what fades fast goes first. A polynomial in
 * ln(1 + 10 n / count), n the number of the depth, through 18 of the depths, set as Chebyshev's points are, gives any number
 * of others. One more is integrated to see that it does (`check`). All are taken from the depths asked for, so that powers
 * of one step's transmittance lead to each.
 */
const NODES = 18;
/** With fewer depths each is integrated: hardly more work. */
const FROM_COUNT = 24;
const PLANS_KEPT = 64;

export interface DepthPlan {
  /** Numbers of the depths that are integrated, rising. */
  integrated: number[];
  /** Numbers of the depths that follow from those by interpolation. */
  others: number[];
  /** A row for each of `others`: the weight of each of `integrated`. */
  weights: Float64Array;
  /** One of `integrated` that interpolation leaves out, with the row that would give it; absent where nothing follows. */
  check?: { at: number; weights: Float64Array };
}

const plans = new Map<number, DepthPlan>();

/** The plan for so many depths. */
export function depthPlan(count: number): DepthPlan {
  const known = plans.get(count);
  if (known !== undefined) return known;
  const plan = count < FROM_COUNT ? everyDepth(count) : interpolating(count);
  if (plans.size < PLANS_KEPT) plans.set(count, plan);
  return plan;
}

const numbersTo = (count: number): number[] => Array.from({ length: count }, (_, n) => n);

/** The plan that integrates at each. */
export function everyDepth(count: number): DepthPlan {
  return { integrated: numbersTo(count), others: [], weights: new Float64Array(0) };
}

function interpolating(count: number): DepthPlan {
  const u = numbersTo(count).map((n) => Math.log(1 + (10 * n) / count));
  const nodes = chebyshevLike(u);
  const rest = numbersTo(count).filter((n) => !nodes.includes(n));
  // The polynomial is likeliest to be off where the product of the distances from its nodes is greatest.
  const distance = (n: number): number =>
    nodes.reduce((product, node) => product * Math.abs(u[n] - u[node]), 1);
  const check = rest.reduce((worst, n) => (distance(n) > distance(worst) ? n : worst));
  const integrated = [...nodes, check].sort((a, b) => a - b);
  const row = (n: number): number[] =>
    integrated.map((node) => (node === check ? 0 : lagrange(u, nodes, node, n)));
  const others = rest.filter((n) => n !== check);
  return {
    integrated,
    others,
    weights: Float64Array.from(others.flatMap(row)),
    check: { at: integrated.indexOf(check), weights: Float64Array.from(row(check)) },
  };
}

/** For each of Chebyshev's points between the ends the nearest depth that is still free. */
function chebyshevLike(u: readonly number[]): number[] {
  const free = new Set(u.keys());
  const half = (u[u.length - 1] - u[0]) / 2;
  return Array.from({ length: NODES }, (_, k) => {
    const ideal = half * (1 - Math.cos((Math.PI * k) / (NODES - 1)));
    const nearest = [...free].reduce((a, b) => (Math.abs(u[b] - ideal) < Math.abs(u[a] - ideal) ? b : a));
    free.delete(nearest);
    return nearest;
  });
}

/** Weight of the value at `node` in the polynomial through `nodes`, at depth `n`. */
function lagrange(u: readonly number[], nodes: readonly number[], node: number, n: number): number {
  return nodes.reduce(
    (product, other) => (other === node ? product : (product * (u[n] - u[other])) / (u[node] - u[other])),
    1,
  );
}
