/**
 * Share of a disc of radius `disc` that lies inside a circle of radius `opening` whose centre is `shift` away. Exact: the lens
 * that two circles cut from each other is two segments on their common chord (elementary geometry; Weisstein, MathWorld,
 * "Circle-Circle Intersection"). One length unit for all three; disc above 0, the others 0 or more. 1 where the disc is wholly
 * inside, 0 where it is outside.
 */
export function discShareInside(disc: number, opening: number, shift: number): number {
  if (shift >= disc + opening) return 0;
  if (shift <= opening - disc) return 1;
  // Circles that all but coincide have no common chord to compute with.
  const concentric = shift < 1e-9 * disc;
  if (concentric || shift <= disc - opening) return Math.min(1, (opening / disc) ** 2);
  const product =
    (disc + opening - shift) * (shift + opening - disc) * (shift + disc - opening) * (shift + disc + opening);
  const halfChord = Math.sqrt(product) / (2 * shift);
  // By the half-angle's tangent and not its cosine, which loses its digits where the disc is small against the opening.
  const segment = (own: number, other: number): number => {
    const toChord = ((shift - other) * (shift + other) + own * own) / (2 * shift);
    return own * own * Math.atan2(halfChord, toChord) - halfChord * toChord;
  };
  return Math.min(
    1,
    Math.max(0, (segment(opening, disc) + segment(disc, opening)) / (Math.PI * disc * disc)),
  );
}
