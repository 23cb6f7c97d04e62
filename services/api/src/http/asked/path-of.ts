/** The path of a request's URL, without its query. */
export function pathOf(url: string): string {
  const end = url.indexOf("?");
  return end === -1 ? url : url.slice(0, end);
}

/** The query of a request's URL, without its question mark; empty where there is none. */
export function queryOf(url: string): string {
  const start = url.indexOf("?");
  return start === -1 ? "" : url.slice(start + 1);
}
