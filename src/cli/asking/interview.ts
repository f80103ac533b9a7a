/** `new` on a terminal: asks, keeps answers, prints the result. */
import path from 'node:path';
import {
  answer,
  formOf,
  isTold,
  nextQuestion,
  nothingTold,
  type QuestionId,
  type Told,
} from '../../order/said/asked.ts';
import { readOrders } from '../../order/read-orders.ts';
import type { Shop } from '../../order/types.ts';
import { pageFor, sentence, type Page } from '../../pages/page.ts';
import { visible } from '../../units/clean.ts';
import { questionText, soFarText } from '../../words/asked-words.ts';
import { faultText } from '../../words/problems.ts';
import { beforeStop } from '../interrupt.ts';
import { size, sizeOne } from '../commands/size.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo, Terminal } from '../io.ts';
import { reportOptions } from '../screen.ts';
import { guardNew, typed, writeOrder } from '../write-order.ts';
import { takeKeys } from './keys.ts';
import { prompt } from './prompt.ts';

export interface Interview {
  readonly file: string;
  readonly force: boolean | undefined;
  readonly shop: Shop;
  readonly shopFile: string | undefined;
  readonly color: boolean;
  readonly terminal: () => Terminal;
}

const PROBLEMS_AT_ONCE = 2;
const asked = 'cinchwright new';

/** Errors: the file cannot be written. */
export async function interview(plan: Interview, io: CliIo): Promise<ExitCode> {
  const { file, color, shopFile: shop } = plan;
  const talk = new Talk(plan, io);
  guardNew({ ...plan, asked }, io);
  if (io.standsAt(path.dirname(file)) !== 'directory')
    throw new CliFault(`cannot write ${printable(file)}: there is no such directory`, { code: exit.input });
  const [name, rest] = [printable(file), 'Enter skips; Ctrl-C stops and keeps your answers.'];
  io.stdout(`${sentence(talk.page, `New order ${name}. ${rest}`).join('\n')}\n\n`);
  const terminal = takeKeys(plan.terminal());
  const release = beforeStop(() => {
    talk.keep();
    terminal.giveBack();
  });
  try {
    if (!(await talk.askAll(terminal))) {
      talk.keep();
      return exit.stopped;
    }
  } finally {
    terminal.giveBack();
    release();
  }
  talk.write();
  io.stderr(`wrote ${name}\n\n`);
  return size([file], { top: 3, format: 'table', units: 'in', color, ...(shop && { shop }) }, io);
}

class Talk {
  readonly page: Page;
  readonly #plan: Interview;
  readonly #io: CliIo;
  readonly #stem: string;
  #told: Told = nothingTold;
  /** Not understood yet. */
  #pending = '';
  #kept = false;

  constructor(plan: Interview, io: CliIo) {
    this.#plan = plan;
    this.#io = io;
    this.#stem = path.basename(plan.file, path.extname(plan.file));
    this.page = pageFor(reportOptions({ units: 'in', color: plan.color }, io));
  }

  /** False when the person stops. */
  async askAll(terminal: Terminal): Promise<boolean> {
    for (let id = nextQuestion(this.#told); id !== undefined; id = nextQuestion(this.#told))
      if (!(await this.#ask(id, terminal))) return false;
    return true;
  }

  async #ask(id: QuestionId, terminal: Terminal): Promise<boolean> {
    const lines = (text: string): string => sentence(this.page, text, 2).join('\n');
    let next = { told: this.#told, taken: '' };
    const buckles = this.#plan.shop.buckles.map(({ id }) => id);
    const done = await prompt(
      {
        question: sentence(this.page, questionText(id, this.#stem))
          .map((line) => this.page.pen.strong(line))
          .join('\n'),
        below: lines(await this.#soFar()),
        check: (line) => {
          const found = answer(this.#told, id, { line, buckles });
          if (!found.ok) return lines(found.problems.slice(0, PROBLEMS_AT_ONCE).map(faultText).join(' '));
          next = found;
          return undefined;
        },
        after: () => (next.taken === '' ? '' : lines(`taken as ${next.taken}`)),
        typing: (line) => {
          this.#pending = line;
        },
      },
      terminal,
    );
    if (!done) return false;
    this.#told = next.told;
    this.#pending = '';
    return true;
  }

  /** Empty before the first answer. */
  async #soFar(): Promise<string> {
    const [entry] = readOrders(this.#form(), 'answers');
    if (entry?.ok !== true) return '';
    const result = await sizeOne(entry, this.#plan.shop, {});
    return result.ok ? soFarText(result, 'in') : '';
  }

  #form(unread = ''): string {
    return formOf(this.#told, { stem: this.#stem, unread });
  }

  /** Prints the order if it cannot write. */
  write(unread = ''): void {
    const text = this.#form(unread);
    try {
      writeOrder({ ...this.#plan, asked, text }, this.#io);
    } catch (error) {
      this.#io.stdout(text);
      throw error;
    }
  }

  /** For someone who stops half-way. */
  keep(): void {
    if (this.#kept) return;
    this.#kept = true;
    const unread = visible(this.#pending.trim());
    const name = printable(this.#plan.file);
    if (!isTold(this.#told) && unread === '') this.#io.stderr('no answers, so nothing was written\n');
    else {
      this.write(unread);
      this.#io.stderr(`saved in ${name}: fill in the rest, then run: cinchwright size ${typed(name)}\n`);
    }
  }
}
