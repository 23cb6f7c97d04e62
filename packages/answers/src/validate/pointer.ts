/** JSON pointer (RFC 6901) to the member `name` of what `pointer` points to. */
export function member(pointer: string, name: string): string {
  return `${pointer}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`;
}

/** Name of the top-level member that `pointer` leads into; undefined for the whole. */
export function topLevelName(pointer: string): string | undefined {
  const [, name] = pointer.split("/", 2);
  return name?.replaceAll("~1", "/").replaceAll("~0", "~");
}
