import { readFileSync } from "node:fs";

/** Files that the process needs beside its connections: threads, pipes, the log, traces, what it reads. */
const reserved = 128;

/** How many files this process may have open at a time; undefined where the system sets no limit or does not say. */
export function openFilesAllowed(): number | undefined {
  const text = limitsOfLinux();
  if (text !== undefined) return numberIn(/^Max open files +(\S+)/m.exec(text)?.[1]);
  const report = process.report.getReport() as { userLimits?: { open_files?: { soft?: number | string } } };
  return numberIn(String(report.userLimits?.open_files?.soft));
}

/** @see https://man7.org/linux/man-pages/man5/proc_pid_limits.5.html */
function limitsOfLinux(): string | undefined {
  try {
    return readFileSync("/proc/self/limits", "utf8");
  } catch {
    return undefined;
  }
}

function numberIn(text: string | undefined): number | undefined {
  return text !== undefined && /^\d+$/.test(text) ? Number(text) : undefined;
}

/** What the configuration and the system allow together. */
export interface FittedConnections {
  connections: number;
  connectionsPerAddress: number;
  /** What had to be lowered, for the log. */
  lowered: string | undefined;
}

/**
 * Holds the limits on connections against the files that the process may open: a connection takes one, and a process that
 * can open none answers nobody. Of what is left one address gets half at the most, so that it cannot keep others out.
 * @throws Error where hardly a connection would be left
 */
export function fitConnections(
  { connections, connectionsPerAddress }: Pick<FittedConnections, "connections" | "connectionsPerAddress">,
  openFiles: number | undefined,
): FittedConnections {
  const room = openFiles === undefined ? connections : openFiles - reserved;
  if (room < 2)
    throw new Error(
      `The system allows ${openFiles} open files, too few: ${reserved} are for the process itself. Raise it, for example with ulimit -n.`,
    );
  if (room >= connections) return { connections, connectionsPerAddress, lowered: undefined };
  const ofOne = Math.min(connectionsPerAddress, Math.floor(room / 2));
  return {
    connections: room,
    connectionsPerAddress: ofOne,
    lowered: `MAX_CONNECTIONS is ${connections}, but the system allows ${openFiles} open files: ${room} connections at a time are taken, ${ofOne} of one address`,
  };
}
