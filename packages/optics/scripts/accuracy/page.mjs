import { attenuationSection } from "./attenuation.mjs";
import { claritySection } from "./clarity.mjs";
import { clearSkySection } from "./clear-sky.mjs";
import { quantaSection } from "./quanta.mjs";
import { scatteringSection } from "./scattering.mjs";
import { stationsSection } from "./stations.mjs";
import { subjectSection } from "./subject.mjs";
import { uprightSection } from "./upright.mjs";

const HEAD = `<!-- Written by scripts/write-accuracy.mjs; do not edit. -->

# How accurate the model is

The model against published points. Every number and plot on this page is computed by \`node packages/optics/scripts/write-accuracy.mjs\`
(after a build); a test fails when the page no longer is what the script gives. "Typical" is the median size of the difference, "largest"
the greatest ratio, as ours against published. How well the answers' percentiles hold is on [the planner's page](../../planner/accuracy/README.md);
what each table is, in [tables/SOURCES.md](../tables/SOURCES.md).
`;

/** The page and its plots: file name in accuracy/ to content. */
export function accuracyFiles() {
  const sections = [
    attenuationSection(),
    scatteringSection(),
    stationsSection(),
    clearSkySection(),
    quantaSection(),
    uprightSection(),
    subjectSection(),
    claritySection(),
  ];
  return {
    "README.md": [HEAD, ...sections.map(({ markdown }) => markdown)].join("\n"),
    ...Object.assign({}, ...sections.map(({ plots }) => plots)),
  };
}
