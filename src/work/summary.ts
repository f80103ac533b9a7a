/** Totals of a backlog, by verdict. */
import { verdicts, type Cells, type Verdict } from './row.ts';

export interface Summary {
  readonly orders: Record<Verdict, number>;
  /** Repeats of an earlier number. */
  sameNumber: number;
  /** Orders whose measurements disagree. */
  doubtful: number;
  /** Orders whose ring to ring is not taped. */
  provisional: number;
  /** Orders with a sore, or another reason to ask first. */
  welfare: number;
}

/** All zero. */
export const newSummary = (): Summary => ({
  orders: { sized: 0, tight: 0, 'none fits': 0, faulty: 0 },
  sameNumber: 0,
  doubtful: 0,
  provisional: 0,
  welfare: 0,
});

/** Adds one row. */
export function count(summary: Summary, cells: Cells): void {
  const verdict = verdicts.find((word) => word === cells.verdict);
  if (verdict !== undefined) summary.orders[verdict] += 1;
  const told = (name: keyof Cells): number => ((cells[name] ?? null) === null ? 0 : 1);
  summary.sameNumber += told('sameNumberAs');
  summary.doubtful += told('remarks');
  summary.provisional += Number(cells.lengthBasis === 'provisional');
  summary.welfare += told('welfare');
}

/** Orders in all. */
export const total = ({ orders }: Summary): number =>
  verdicts.reduce((sum, verdict) => sum + orders[verdict], 0);
