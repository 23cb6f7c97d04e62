/** Whether the month of a date and time that keeps one of the patterns has that day: engines disagree on those without. */
export function dayExists(dateAndTime: string): boolean {
  const [year = 0, month = 0, day = 0] = dateAndTime.slice(0, 10).split("-").map(Number);
  // Day 0 of the next month is the last one of this.
  return day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
}
