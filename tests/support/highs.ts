/** Integer programs, solved by HiGHS. */
import loadHighs from 'highs';

// Its types describe the CommonJS build, whose loader is `default`.
const highs = await (loadHighs as unknown as typeof loadHighs.default)();

/** The objective at its best, a whole number. @throws when HiGHS finds none */
export function optimum(program: string): number {
  const { Status, ObjectiveValue } = highs.solve(program, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
  if (Status !== 'Optimal') throw new Error(`HiGHS says ${Status}`);
  return Math.round(ObjectiveValue);
}
