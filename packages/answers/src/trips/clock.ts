/** Times of day, as text to the millisecond and as seconds since midnight. */

const day_s = 86_400;

/** @param clock `hh:mm:ss`, with up to three decimals */
export function secondsOf(clock: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(":").map(Number);
  return hours * 3600 + minutes * 60 + seconds;
}

/** Within a day, 0 or more. */
export function withinDay(seconds: number): number {
  const left = seconds % day_s;
  return left < 0 ? left + day_s : left;
}

const two = (number: number): string => String(number).padStart(2, "0");

/** As `hh:mm:ss`, with tenths where they are not 0; past midnight it begins anew. */
export function clockAt(seconds: number): string {
  const tenths = Math.round(withinDay(seconds) * 10) % (day_s * 10);
  const whole = Math.floor(tenths / 10);
  const text = `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
  return tenths % 10 === 0 ? text : `${text}.${tenths % 10}`;
}
