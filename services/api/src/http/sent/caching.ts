/** How long others may keep what is the same for all who ask (RFC 9111, section 5.2.2; RFC 5861 for what is stale). */

/** Reference data and pages: they change with the build alone, and an hour later is soon enough. */
export const forHours = "public, max-age=3600, stale-while-revalidate=86400";

/**
 * Without `public`, which says nothing more of a request that brings no key, and would be a tenth of all headers.
 *
 * An answer changes with the model or a text alone. Its URL does not say which it was: after some minutes it is asked for again.
 */
export const forMinutes = "max-age=300";

/** The URL names the model: as long as anyone asks for it, the answer has its figures. */
export const forTheModel = "max-age=604800";
