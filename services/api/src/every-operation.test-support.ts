import type { FastifyInstance } from "fastify";

interface Operation {
  operationId: string;
  tags: string[];
  parameters?: ({ name: string; in: string; example?: unknown } | { $ref: string })[];
  requestBody?: { content: Record<string, { examples: Record<string, { value: object }> }> };
}

/** An operation of the description, and a request for it that the service answers. */
export interface AskedOperation {
  operation: Operation;
  request: { method: "GET" | "POST"; url: string; payload?: object };
}

/** Every operation of the description, asked as its own examples ask. */
export async function everyOperation(app: FastifyInstance): Promise<AskedOperation[]> {
  const { paths, components } = (await app.inject("/openapi.json")).json();
  return Object.entries<Record<string, Operation>>(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => {
      const query = (operation.parameters ?? []).flatMap((given) => {
        const one = "$ref" in given ? components.parameters[given.$ref.split("/").at(-1) ?? ""] : given;
        return one.in === "query" && one.example !== undefined ? [[one.name, String(one.example)]] : [];
      });
      const [first] = Object.values(operation.requestBody?.content["application/json"]?.examples ?? {});
      const url = path.replace("{name}", "not-found");
      return {
        operation,
        request: {
          method: method === "get" ? ("GET" as const) : ("POST" as const),
          url: query.length === 0 ? url : `${url}?${new URLSearchParams(query)}`,
          ...(first === undefined ? {} : { payload: first.value }),
        },
      };
    }),
  );
}
