/** Input and output of the bench schedule. */

/** Whole, so sums are exact. */
export type Minutes = number;

export interface ShopDays {
  /** ISO 8601: 1 Monday to 7 Sunday. */
  readonly weekdays: readonly number[];
  readonly holidays: readonly string[];
}

export interface Bench {
  readonly id: string;
  readonly minutesADay: Minutes;
  /** All shop weekdays when left out. */
  readonly weekdays?: readonly number[];
}

export interface Job {
  readonly id: string;
  readonly minutes: Minutes;
  /** By the end of this day; without one, never late. */
  readonly due?: string;
  /** Starts no earlier: the day its deliveries arrive. */
  readonly from?: string;
}

export interface ScheduleTask {
  readonly days: ShopDays;
  readonly benches: readonly Bench[];
  readonly jobs: readonly Job[];
  /** First possible day of work. */
  readonly start: string;
}

export interface ScheduledJob {
  readonly id: string;
  readonly bench: string;
  readonly startDay: string;
  /** Minutes into the bench's day. */
  readonly startMinute: Minutes;
  readonly endDay: string;
  readonly endMinute: Minutes;
  /** The due day if met, else the day it ends. */
  readonly promise: string;
  /** Working days after the due day, 0 when on time. */
  readonly lateBy: number;
}

export interface Schedule {
  /** By id. */
  readonly jobs: readonly ScheduledJob[];
  /** Late jobs, and a proven lower bound. */
  readonly late: { readonly value: number; readonly bound: number };
  readonly proven: boolean;
}
