// What each water type looks like to a diver: Secchi depth and visibility.

import { WAVELENGTHS_NM } from "#model/spectrum/grid";
import { JERLOV_TYPES, jerlovKd } from "#model/water/jerlov-1976";
import { classicalSecchiDepth_m, clearestIndex, secchiDepth_m } from "#model/water/secchi";
import { VISIBILITY_INDEX, visibilityFromBeam_m } from "#model/water/visibility";
import { waterFromKd } from "#model/water/water-optics";
import { deviationTable, markdownTable, number } from "./numbers.mjs";

const GREEN = WAVELENGTHS_NM.indexOf(550);

export function claritySection() {
  const rows = JERLOV_TYPES.map((type) => {
    const water = waterFromKd(jerlovKd(type));
    const at = clearestIndex(water.kd_reference_per_m);
    return {
      type,
      clearest_nm: WAVELENGTHS_NM[at],
      least_kd: water.kd_reference_per_m[at],
      secchi: secchiDepth_m(water),
      classical: classicalSecchiDepth_m(water.beam_attenuation_per_m[GREEN], water.kd_reference_per_m[GREEN]),
      visibility: visibilityFromBeam_m(water.beam_attenuation_per_m[VISIBILITY_INDEX]),
    };
  });
  const markdown = `## 8. Secchi depth and visibility of each type

Sources: Lee et al. 2015, *Remote Sensing of Environment* 169, 139 (measured and predicted depths differ by 18 % on average); classical
theory, 8.7/(c + Kd) at 550 nm, constant from memory; visibility 4.8/c at 530 nm as in section 3.

${markdownTable(
  [
    "Type",
    "Clearest at (nm)",
    "Kd there (1/m)",
    "Secchi depth, Lee 2015 (m)",
    "Secchi depth, classical (m)",
    "Visibility (m)",
  ],
  rows.map(({ type, clearest_nm, least_kd, secchi, classical, visibility }) => [
    type,
    clearest_nm,
    number(least_kd),
    number(secchi),
    number(classical),
    number(visibility),
  ]),
)}

${deviationTable([
  [
    "Lee 2015 against the classical theory",
    rows.map(({ type, secchi, classical }) => ({
      ours: secchi,
      published: classical,
      where: `type ${type}`,
    })),
  ],
])}

- **Domain:** a white disc of 30 cm, lowered in daylight; visibility as in section 3.
- **Weak:** readings differ by about 20 % between people, sun and waves. The two theories part most where scattering outweighs absorption; scattering, and with it the classical depth and the visibility, is uncertain by a factor of two for a type.
`;
  return { markdown, plots: {} };
}
