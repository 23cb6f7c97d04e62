const date = "\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])";
const hourAndMinute = "([01]\\d|2[0-3]):[0-5]\\d";
const second = ":[0-5]\\d";
const offset = `(Z|[+-]${hourAndMinute})`;

/** A date and time as RFC 3339 writes it, in capitals, without leap seconds. */
export const instantPattern = new RegExp(`^${date}T${hourAndMinute}${second}(\\.\\d{1,9})?${offset}$`);

/** A date and time on the wall, seconds if need be. */
export const localTimePattern = new RegExp(`^${date}T${hourAndMinute}(${second})?$`);

/** Whether the month of a date and time that keeps one of the patterns has that day: engines disagree on those without. */
export function dayExists(dateAndTime: string): boolean {
  const [year = 0, month = 0, day = 0] = dateAndTime.slice(0, 10).split("-").map(Number);
  // Day 0 of the next month is the last one of this.
  return day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
}
