/** Paths that whoever runs or explores the service needs when it is busiest: no limit on requests holds there. */
const operational = /^\/(?:health|docs)(?:\/|$)|^\/(?:openapi\.json|metrics)$/;

export function isOperational(path: string): boolean {
  return operational.test(path);
}
