/** What shows an answer or is made of it, by its path under `/v1`. Pictures are had by `GET`, too, files by `POST` alone. */
export type ShownBy = `pictures/${string}` | "slates" | "grades";

/**
 * Where pictures of a scene are, the scene with them as far as a query string holds it: not where it has lists, but for one group of
 * lamps, which has fields of its own. What was assumed is left out: whoever follows a link assumes the same again, and so comes to
 * the same scene in its one form. Units and language are no part of it: they are the caller's to say, as is the look.
 */
export function linksOf(
  shownBy: readonly ShownBy[],
  { lamps = [], ...scene }: { lamps?: readonly object[] },
  assumed: readonly string[],
): object[] {
  const told = [
    ...Object.entries(scene),
    ...lamps.flatMap((lamp) =>
      Object.entries(lamp).map(([name, value]) => [`lamps/0/${name}`, value] as const),
    ),
  ].filter(([name]) => !assumed.includes(name));
  const fits = lamps.length < 2 && told.every(([, value]) => typeof value !== "object");
  const query = told.map(
    ([name, value]) => `${name.replace("lamps/0/", "lamp_")}=${encodeURIComponent(String(value))}`,
  );
  return shownBy.map((path) => {
    const isGet = fits && path.includes("/");
    return {
      name: path.replace("pictures/", ""),
      method: isGet ? "GET" : "POST",
      href: `/v1/${path}${isGet ? `?${query.join("&")}` : ""}`,
    };
  });
}
