/** A picture of what is left of daylight, wavelength by wavelength. */
import type { Picture } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { chartSvg, ticksTo } from "./chart.js";

const FROM_NM = 400;
const TO_NM = 700;
const TICKS_NM = [400, 450, 500, 550, 600, 650, 700];
const MOST_TICKS = 8;
/** Told in the text alternative: the ticks, which are not the wavelengths that questions ask for. */
const TOLD_NM = TICKS_NM;

/**
 * On an axis that fits the curve: what is left deep down would be a flat line between 0 and 100 %.
 * @param left share left, 0 to 1, per wavelength.
 * @param depth as the question says it.
 */
export function spectrumPicture(
  wavelengths_nm: readonly number[],
  left: readonly number[],
  depth: string,
  say: Catalogue,
): Picture {
  const points = wavelengths_nm
    .map((nm, i): [number, number] => [nm, 100 * (left[i] ?? 0)])
    .filter(([nm]) => nm >= FROM_NM && nm <= TO_NM);
  const words = say.light.picture;
  const shares = TOLD_NM.map((nm) => ({ nm, percent: points.find(([at]) => at === nm)?.[1] ?? 0 }));
  const alt = words.alt({ depth, shares });
  const percents = ticksTo(Math.max(...points.map(([, percent]) => percent)), MOST_TICKS);
  const svg = chartSvg(
    {
      title: words.title({ depth }),
      alt,
      x: { from: FROM_NM, to: TO_NM, ticks: TICKS_NM, label: words.xAxis },
      y: { from: 0, to: percents[percents.length - 1] ?? 100, ticks: percents, label: words.yAxis },
      curves: [{ points }],
    },
    say,
  );
  return { svg, alt };
}
