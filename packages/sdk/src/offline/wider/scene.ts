import { mountedOn } from "@sunfathom/answers";

// What scenes of light say of what a filter is mounted on. It has nothing of what every page starts with, which whoever loads it has:
// bundlers keep what the two share in what every page starts with.
export { mountedOn };
