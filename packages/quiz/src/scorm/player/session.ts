/** A learner's way through a paper, and what the platform is told of it. Knows nothing of how it looks. */
import { type Grade, gradeWith } from "../../grade/grade-with.js";
import type { Response } from "../../grade/response.js";
import type { Item } from "../../item/item.js";
import type { Paper } from "../paper.js";
import { reported } from "./interactions.js";
import { type Progress, recall, remember } from "./memory.js";
import { type Platform, span } from "./platform.js";

const FULL = 100;
/** SCORM 1.2 takes a score from 0 to 100, with decimals. */
const percent = (share: number): number => Math.round(share * FULL * 100) / 100;

export class Session {
  readonly items: readonly Item[];
  private readonly progress: Progress;
  /** When the question that is shown was first seen. */
  private shown_ms = Date.now();
  private told: number;

  constructor(
    readonly paper: Paper,
    readonly platform: Platform,
  ) {
    this.items = paper.items.map(({ item }) => item);
    this.progress = recall(paper.id, this.items, platform.get("cmi.suspend_data")) ?? {
      responses: new Map(),
      finished: false,
    };
    this.told = Number(platform.get("cmi.interactions._count")) || 0;
    const status = platform.get("cmi.core.lesson_status");
    if (status === "not attempted" || status === "") platform.set("cmi.core.lesson_status", "incomplete");
  }

  get isFinished(): boolean {
    return this.progress.finished;
  }

  get hasBegun(): boolean {
    return this.progress.responses.size > 0;
  }

  get blanks(): Item[] {
    return this.items.filter(({ id }) => !this.progress.responses.has(id));
  }

  responseTo(item: Item): Response | undefined {
    return this.progress.responses.get(item.id);
  }

  /** Of a blank that it was left blank. */
  gradeOf(item: Item): Grade {
    return gradeWith(this.paper.words, item, this.responseTo(item) ?? {});
  }

  get score(): number {
    return this.items.reduce((sum, item) => sum + this.gradeOf(item).score, 0);
  }

  get percent(): number {
    return percent(this.score / this.items.length);
  }

  see(place: number): void {
    this.shown_ms = Date.now();
    this.platform.set("cmi.core.lesson_location", String(place + 1));
  }

  /** Marks an answer, for good. */
  answer(item: Item, response: Response): Grade {
    this.progress.responses.set(item.id, response);
    this.tell(item, response);
    if (this.blanks.length === 0) this.progress.finished = true;
    this.keep();
    return this.gradeOf(item);
  }

  /** What is blank stays so. */
  finish(): void {
    this.progress.finished = true;
    this.keep();
  }

  private tell(item: Item, response: Response): void {
    const { platform } = this;
    const { type, student_response, pattern, result } = reported(item, response, this.paper.words);
    const at = `cmi.interactions.${this.told++}`;
    platform.set(`${at}.id`, `${item.id}_${item.template}`);
    platform.set(`${at}.type`, type);
    platform.set(`${at}.time`, platform.now);
    platform.set(`${at}.correct_responses.0.pattern`, pattern);
    platform.set(`${at}.weighting`, "1");
    platform.set(`${at}.student_response`, student_response);
    platform.set(`${at}.result`, result);
    platform.set(`${at}.latency`, span(Date.now() - this.shown_ms));
  }

  private keep(): void {
    const { platform } = this;
    platform.set("cmi.suspend_data", remember(this.paper.id, this.items, this.progress));
    platform.set("cmi.core.score.min", "0");
    platform.set("cmi.core.score.max", String(FULL));
    platform.set("cmi.core.score.raw", String(this.percent));
    if (this.isFinished) platform.set("cmi.core.lesson_status", "completed");
    platform.commit();
  }

  close(): void {
    this.platform.close(this.isFinished);
  }
}
