/** Texts on a template for a sheet behind the lens. */
export interface CuttingTemplateTexts {
  title: string;
  /** Sizes in millimetres: a ruler has those. */
  sizes: (p: { sheet: readonly [number, number]; opening: readonly [number, number] }) => string;
  /** What to do before the cut, in this order. */
  steps: readonly string[];
  /** At the bar. */
  bar: string;
  /** What is drawn how. */
  cut: string;
  opening: string;
  tape: string;
  contacts: string;
  cautions: readonly string[];
  description: (p: { sheet: readonly [number, number]; opening: readonly [number, number] }) => string;
}
