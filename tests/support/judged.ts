/** Asks one rule about facts and a candidate that hold only what is given. */
import type { Candidate } from '../../src/cinch/candidate.ts';
import { rules } from '../../src/rules/registry.ts';
import type { CaseFacts, Judgement } from '../../src/rules/rule.ts';

export interface Judged {
  readonly judgement: Judgement;
  readonly margin: number | undefined;
  /** The reason, with bare numbers. */
  readonly told: string;
}

type Part<T> = { readonly [K in keyof T]?: T[K] extends object ? Partial<T[K]> : T[K] };

export function judgedBy(id: string, facts: Part<CaseFacts>, candidate: Part<Candidate>): Judged {
  const rule = rules.find((one) => one.id === id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  const [seen, laid] = [facts as CaseFacts, candidate as Candidate];
  const { judgement, margin, reason } = rule.judge(seen, laid);
  const { words, values } = reason(seen, laid);
  const value = (i: number): string => {
    const one = values[i] ?? '';
    return typeof one === 'string' ? one : String(Math.round(one.value * 1000) / 1000);
  };
  return { judgement, margin, told: words.map((word, i) => word + value(i)).join('') };
}
