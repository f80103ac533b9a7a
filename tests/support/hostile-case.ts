/** An order, shop and file with one hostile text, and every result printed of them. */
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Problem } from '../../src/yaml/problem.ts';
import { rowOf, type Row } from '../../src/work/row.ts';
import { askAbout, toAsk } from '../../src/advice/ask.ts';
import type { AskedOrder } from '../../src/words/about-ask.ts';
import { learnJson } from '../../src/views/learn-data.ts';
import { learnSheet } from '../../src/views/learn-sheet.ts';
import { learnSvg } from '../../src/views/learn-svg.ts';
import { learnFrom } from '../../src/learn/learn.ts';
import { materialsSheet } from '../../src/views/materials-sheet.ts';
import { photoSheet } from '../../src/views/photo-sheet.ts';
import type { quotesJson } from '../../src/views/quote-data.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { scheduleSheet } from '../../src/views/schedule-sheet.ts';
import type { Sheet } from '../../src/pages/sheet.ts';
import type { ticketsJson } from '../../src/views/ticket-data.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import type { CheckResult, PhotoResult, SizeResult } from '../../src/words/types.ts';
import { backlogFrom, type BacklogPapers } from './backlog-papers.ts';
import { lazily } from './lazily.ts';
import { outcomesOf } from './outcome-cases.ts';
import { photoResultFor } from './photo-scenes.ts';
import { orderWith, problemWith, shopWith } from './hostile-texts.ts';
import { quoteFor, ticketFor } from './papers.ts';

export interface Case {
  readonly outcome: ReturnType<typeof learnFrom>;
  readonly learned: { readonly json: string; readonly svg: string };
  readonly ask: readonly AskedOrder[];
  readonly backlog: BacklogPapers;
  readonly quotes: Parameters<typeof quotesJson>[0];
  readonly tickets: Parameters<typeof ticketsJson>[0];
  readonly sheets: readonly Sheet[];
  readonly size: readonly SizeResult[];
  readonly check: readonly CheckResult[];
  readonly photo: readonly PhotoResult[];
  readonly problems: readonly Problem[];
  readonly row: Row;
}

const cases = new Map<string, Case>();

/** Once for each text and on demand: slower than all printers. */
export function caseWith(text: string): Case {
  const made = cases.get(text) ?? newCase(text);
  cases.set(text, made);
  return made;
}

function newCase(text: string): Case {
  const order = orderWith(text);
  const shop = shopWith(text);
  const advice = sizeOrder(order, shop);
  const wants = checkCinch(order.wants!, 'wants', advice);
  const current = checkCinch(order.current!, 'current', advice);
  const problems = [problemWith(text)];
  const failed = { ok: false, file: text, order: text, problems } as const;
  const about = { file: text, day: '2026-11-20' };
  const made: Case = lazily<Case>({
    outcome: () => learnFrom(outcomesOf(12, 1, { required: 1.3, softness: 0.15, give: 1 }), shop),
    learned: () => ({ json: learnJson(made.outcome, about), svg: learnSvg(made.outcome) }),
    ask: () => {
      const asked = askAbout(advice, { strata: 2, seed: 1 });
      const { questions, photo } = toAsk(asked);
      return [{ ok: true, file: text, result: asked, toAsk: questions, photo }, failed];
    },
    problems: () => problems,
    row: () => rowOf(advice, { file: text, document: 1, line: 1 }),
    backlog: () => {
      const backlog = backlogFrom([order], shop);
      return { ...backlog, results: [...backlog.results, failed] };
    },
    quotes: () => [{ ok: true, file: text, order: text, paper: quoteFor(order, shop), none: undefined }],
    tickets: () => [{ ok: true, file: text, order: text, paper: ticketFor(order, shop), none: undefined }],
    sheets: () => [
      learnSheet(made.outcome, about),
      materialsSheet(made.backlog.materials, made.backlog.results.slice(0, -1)),
      scheduleSheet(made.backlog.agenda, made.backlog.asked, made.backlog.results.slice(0, -1)),
      quoteSheet(quoteFor(order, shop), { units: 'in', itemized: true }),
      ticketSheet(ticketFor(order, shop), 'in'),
      photoSheet(photoResultFor(advice, text), 'in'),
    ],
    size: () => [{ ok: true, file: text, advice, wants }, failed],
    check: () => [{ ok: true, file: text, advice, checked: [wants, current] }, failed],
    photo: () => [photoResultFor(advice, text), failed],
  });
  return made;
}
