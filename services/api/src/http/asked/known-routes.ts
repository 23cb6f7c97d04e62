import type { FastifyInstance } from "fastify";

/** The paths that the service knows, with the methods that each takes. */
export class KnownRoutes {
  readonly #methods = new Map<string, Set<string>>();
  readonly #patterns: { pattern: RegExp; url: string }[] = [];

  /** Takes note of every route that `app` gets from now on. */
  watch(app: FastifyInstance): void {
    app.addHook("onRoute", ({ url, method }) => {
      // Whatever follows: that is no path.
      if (url === "*") return;
      const known = this.#methods.get(url);
      const methods = known ?? new Set();
      for (const name of [method].flat()) methods.add(name);
      if (known !== undefined) return;
      this.#methods.set(url, methods);
      const source = url.split("/").map((part) => (part.startsWith(":") ? "[^/]+" : escaped(part)));
      this.#patterns.push({ pattern: new RegExp(`^${source.join("/")}$`), url });
    });
  }

  /** Methods that `path` takes, OPTIONS with them as every path does; empty where there is nothing at it. */
  methodsOf(path: string): string[] {
    const route = this.#patterns.find(({ pattern }) => pattern.test(path));
    if (route === undefined) return [];
    return [...new Set([...(this.#methods.get(route.url) ?? []), "OPTIONS"])].sort();
  }

  /** Paths without parameters, to suggest to whoever missed one. */
  paths(): string[] {
    return [...this.#methods.keys()].filter((url) => !/[:*]/.test(url));
  }
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
