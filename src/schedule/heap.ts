/** A heap: the first of many by a given order, found and taken out quickly. */

export class Heap<T> {
  private readonly items: T[] = [];
  private readonly before: (a: T, b: T) => boolean;

  /** `before` says whether one item comes before another; items that are alike come in any order. */
  constructor(before: (a: T, b: T) => boolean) {
    this.before = before;
  }

  get size(): number {
    return this.items.length;
  }

  get first(): T | undefined {
    return this.items[0];
  }

  push(item: T): void {
    const { items } = this;
    let i = items.push(item) - 1;
    while (i > 0 && this.isBefore(i, (i - 1) >> 1)) {
      this.swap(i, (i - 1) >> 1);
      i = (i - 1) >> 1;
    }
  }

  pop(): T | undefined {
    const { items } = this;
    const first = items[0];
    const last = items.pop();
    if (items.length === 0 || last === undefined) return first;
    items[0] = last;
    for (let i = 0; ;) {
      const [left, right] = [2 * i + 1, 2 * i + 2];
      const child = right < items.length && this.isBefore(right, left) ? right : left;
      if (child >= items.length || !this.isBefore(child, i)) return first;
      this.swap(i, child);
      i = child;
    }
  }

  private isBefore(i: number, k: number): boolean {
    const [a, b] = [this.items[i], this.items[k]];
    return a !== undefined && b !== undefined && this.before(a, b);
  }

  private swap(i: number, k: number): void {
    const [a, b] = [this.items[i], this.items[k]];
    if (a === undefined || b === undefined) return;
    this.items[i] = b;
    this.items[k] = a;
  }
}
