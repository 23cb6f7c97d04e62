/** Paths that whoever runs the service needs when it is busiest: no limit on requests holds there. */
const operational = /^\/health\/(?:live|ready)$/;

export function isOperational(path: string): boolean {
  return operational.test(path);
}
