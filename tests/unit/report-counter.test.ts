/** What a clerk who knows only the README needs to be told on the screens of `size`, `check` and `ask`. */
import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { askAbout, toAsk } from '../../src/ask/ask.ts';
import type { AskedOrder } from '../../src/report/about-ask.ts';
import { askText } from '../../src/report/ask-text.ts';
import { oddsText, shortCaution } from '../../src/report/counter-words.ts';
import type { ReportOptions, SizeResult } from '../../src/report/types.ts';
import { tiedText } from '../../src/report/words.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { exampleOrders } from '../support/written-orders.ts';
import { askScreen, checkScreen, sizeScreen } from '../support/screens.ts';
import { formatLength } from '../../src/units/print.ts';
import { cases, checked, orderWith, plainOptions, sized } from './report-cases.ts';

const screen = (result: SizeResult, change: Partial<ReportOptions> = {}): string =>
  sizeScreen([result], { ...plainOptions, ...change });
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');
