/** Work counted in elementary steps instead of seconds, so that a plan is the same on every machine. */

export class Steps {
  used = 0;
  private readonly allowed: number;

  constructor(allowed: number) {
    this.allowed = allowed;
  }

  /** Counts work done. */
  take(count: number): void {
    this.used += count;
  }

  get left(): number {
    return Math.max(0, this.allowed - this.used);
  }

  get spent(): boolean {
    return this.used >= this.allowed;
  }
}
