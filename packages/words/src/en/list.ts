/** A spoken list: "one, two and three". */
export const spoken = (all: readonly string[]): string =>
  all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all[all.length - 1]}`;
