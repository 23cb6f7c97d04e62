/** How long others may keep what is the same for all who ask (RFC 9111, section 5.2.2; RFC 5861 for what is stale). */

/** Reference data and pages: they change with the build alone, and an hour later is soon enough. */
export const forHours = "public, max-age=3600, stale-while-revalidate=86400";

/**
 * A picture changes with the model or a text alone, and its URL does not say which it was: after some minutes it is asked for again,
 * and until it has come the one that is there is shown.
 */
export const pictureForMinutes = "public, max-age=300, stale-while-revalidate=3600";

/**
 * An answer, which lasts as pictures do: an old one beside a new one would contradict it, so none is shown when its time is up.
 * Without `public`, which says nothing more of a request that brings no key (RFC 9111, section 3.5), and would take a part of the 500
 * bytes that headers have.
 */
export const forMinutes = "max-age=300";

/** The URL names the model: as long as anyone asks for it, the answer has its figures. */
export const forTheModel = "max-age=604800";

/** What names guests, their cameras and what they own, or a dive that somebody dived, is for the caller alone. */
export const privateForMinutes = "private, max-age=300";
