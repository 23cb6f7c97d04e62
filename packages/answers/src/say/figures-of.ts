export interface Figure {
  name: string;
  value: number;
}

/** The numbers among the parameters of a code, by their names. */
export const figuresOf = (parameters: object): Figure[] =>
  Object.entries(parameters).flatMap(([name, value]) => (typeof value === "number" ? [{ name, value }] : []));
