const date = "\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])";
const hourAndMinute = "([01]\\d|2[0-3]):[0-5]\\d";
const second = ":[0-5]\\d";
const offset = `(Z|[+-]${hourAndMinute})`;

/** A date and time as RFC 3339 writes it, in capitals, without leap seconds. */
export const instantPattern = new RegExp(`^${date}T${hourAndMinute}${second}(\\.\\d{1,9})?${offset}$`);

/** A date and time on the wall, seconds if need be. */
export const localTimePattern = new RegExp(`^${date}T${hourAndMinute}(${second})?$`);
