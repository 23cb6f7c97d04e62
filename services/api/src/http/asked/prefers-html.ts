/**
 * Whether an `Accept` header asks for a page rather than for data, as browsers' does: it names `text/html`, and names JSON not at all
 * or with a lower weight (RFC 9110, section 12.5.1). Who takes anything gets data.
 */
export function prefersHtml(accept: string | undefined): boolean {
  if (accept === undefined) return false;
  const weights = new Map<string, number>();
  for (const range of accept.toLowerCase().split(",")) {
    const [name = "", ...parameters] = range.split(";").map((part) => part.trim());
    const [, given] =
      /^q=([01](?:\.\d{0,3})?)$/.exec(parameters.find((one) => one.startsWith("q=")) ?? "") ?? [];
    weights.set(name, given === undefined ? 1 : Number(given));
  }
  const html = weights.get("text/html") ?? 0;
  return html > 0 && html > (weights.get("application/json") ?? 0);
}
