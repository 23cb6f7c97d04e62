/**
 * The learning platform as SCORM 1.2 lets a page speak to it (ADL, SCORM 1.2 Run-Time Environment): an object `API` in a window
 * around this one or in the one that opened it. Without one everything works, and is kept nowhere.
 */
interface Api {
  LMSInitialize(nothing: ""): string;
  LMSFinish(nothing: ""): string;
  LMSGetValue(element: string): string;
  LMSSetValue(element: string, value: string): string;
  LMSCommit(nothing: ""): string;
}

type Around = Window & { API?: Api };

/** A platform has fewer frames than this around a page. */
const MOST_FRAMES = 10;

function within(start: Window | null): Api | undefined {
  let around = start as Around | null;
  try {
    for (let i = 0; around !== null && i < MOST_FRAMES; i++) {
      if (around.API !== undefined) return around.API;
      if (around.parent === around) return undefined;
      around = around.parent as Around;
    }
  } catch {
    // A window of another origin, which is no platform's.
  }
  return undefined;
}

function openedBy(): Api | undefined {
  try {
    return within(window.opener as Window | null) ?? within((window.top?.opener as Window | null) ?? null);
  } catch {
    return undefined;
  }
}

const seconds = 1000;
const two = (value: number): string => String(Math.floor(value)).padStart(2, "0");
/** HH:MM:SS, the hours up to 9999. */
export function span(ms: number): string {
  const s = Math.max(0, ms) / seconds;
  return `${two(Math.min(9999, s / 3600))}:${two((s / 60) % 60)}:${two(s % 60)}`;
}
const clock = (now: Date): string =>
  [now.getHours(), now.getMinutes(), now.getSeconds()].map((part) => two(part)).join(":");

export class Platform {
  private readonly since = Date.now();
  private isOpen: boolean;
  /** Whether it took all that it was told. */
  takesAll = true;

  constructor(private readonly api: Api | undefined) {
    this.isOpen = api !== undefined && api.LMSInitialize("") === "true";
  }

  static find(): Platform {
    return new Platform(within(window) ?? openedBy());
  }

  get isConnected(): boolean {
    return this.isOpen;
  }

  get(element: string): string {
    return this.isOpen && this.api ? String(this.api.LMSGetValue(element)) : "";
  }

  set(element: string, value: string): void {
    if (!this.isOpen || !this.api) return;
    if (String(this.api.LMSSetValue(element, value)) !== "true") this.takesAll = false;
  }

  /** The time of day, as interactions have it. */
  get now(): string {
    return clock(new Date());
  }

  commit(): void {
    if (this.isOpen && this.api && String(this.api.LMSCommit("")) !== "true") this.takesAll = false;
  }

  /** Once, when the page goes. @param completed whether nothing is left to come back for */
  close(completed: boolean): void {
    if (!this.isOpen || !this.api) return;
    this.set("cmi.core.session_time", span(Date.now() - this.since));
    this.set("cmi.core.exit", completed ? "" : "suspend");
    this.commit();
    this.api.LMSFinish("");
    this.isOpen = false;
  }
}
