/** What a plan for a trip can come in: calendars after RFC 5545, captions after the W3C's WebVTT. */
export type TripForm = "application/json" | "text/calendar" | "text/vtt";

/** How a form that is no JSON is sent. RFC 5545, section 8.1: a calendar says its character set, and a name helps who saves it. */
export const headersOf = (name: string, form: TripForm): Record<string, string> => ({
  "content-type": `${form}; charset=utf-8`,
  "content-disposition": `inline; filename="${name}.${form === "text/calendar" ? "ics" : "vtt"}"`,
});
