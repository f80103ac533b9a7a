/** What a schedule of the benches is made from and what it says: plain data, days as ISO 8601 text, work in whole minutes. */

/** Work in whole minutes, so that sums are exact. */
export type Minutes = number;

/** When the shop works. */
export interface ShopDays {
  /** Weekdays as ISO 8601 counts them: 1 Monday to 7 Sunday. */
  readonly weekdays: readonly number[];
  /** Days off; those on a weekday that is off anyway do no harm. */
  readonly holidays: readonly string[];
}

export interface Bench {
  /** Unique among the benches. */
  readonly id: string;
  /** Work it does on each day on which it works. */
  readonly minutesADay: Minutes;
  /** Weekdays of the shop on which it works; all of them when left out. */
  readonly weekdays?: readonly number[];
}

export interface Job {
  /** Unique among the jobs. */
  readonly id: string;
  readonly minutes: Minutes;
  /** To be done by the end of this day; a job without one is never late. */
  readonly due?: string;
  /** Not begun before this day, on which what it waits for comes. */
  readonly from?: string;
}

export interface ScheduleTask {
  readonly days: ShopDays;
  readonly benches: readonly Bench[];
  readonly jobs: readonly Job[];
  /** First day on which work can be done; "today" is for the caller to know. */
  readonly start: string;
}

export interface ScheduledJob {
  readonly id: string;
  readonly bench: string;
  readonly startDay: string;
  /** Minutes of the bench's day gone by when it begins. */
  readonly startMinute: Minutes;
  readonly endDay: string;
  readonly endMinute: Minutes;
  /** The due day when it is met, else the day it ends. */
  readonly promise: string;
  /** Working days after the due day on which it ends, 0 when on time. */
  readonly lateBy: number;
}

export interface Schedule {
  /** In the order of their ids. */
  readonly jobs: readonly ScheduledJob[];
  /** Jobs that are late, and the number below which no schedule can come. */
  readonly late: { readonly value: number; readonly bound: number };
  readonly proven: boolean;
}
