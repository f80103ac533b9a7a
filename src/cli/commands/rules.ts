/** `rules`: what cinches are judged by, and on whose word. */
import type { Command } from 'commander';
import type { ReportOptions, Format } from '../../report/types.ts';
import type { AnyRule } from '../../rules/rule.ts';
import { nearestWord } from '../../units/nearest.ts';
import { emit } from '../emit.ts';
import { CliFault, didYouMean, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { formatOption, unitsOption } from '../options.ts';
import type { Session } from '../program.ts';
import { reportOptions } from '../screen.ts';

interface RulesOptions {
  format: Format;
  units: 'in' | 'cm';
  color: boolean;
}

const examples = `
Examples:
  cinchwright rules
  cinchwright rules elbow-clearance
  cinchwright rules --format markdown`;

/** Adds the command. */
export function addRules(program: Command, session: Session): void {
  program
    .command('rules')
    .summary('list the rules, or tell all about one')
    .description(
      'Lists the rules that cinches are judged by, or tells all about one: its question, reasons and examples.',
    )
    .argument('[id]', 'one rule')
    .addOption(formatOption())
    .addOption(unitsOption())
    .addHelpText('after', examples)
    .action(async (id: string | undefined, _: unknown, command: Command) => {
      session.code = await tellRules(id, command.optsWithGlobals(), session.io);
    });
}

async function tellRules(id: string | undefined, options: RulesOptions, io: CliIo): Promise<ExitCode> {
  const { rules } = await import('../../rules/registry.ts');
  const chosen = id === undefined ? rules : [ruleOf(id, rules)];
  const text = await printers[options.format](
    chosen,
    reportOptions({ ...options, why: id !== undefined }, io),
  );
  emit(text, undefined, io);
  return exit.good;
}

function ruleOf(id: string, rules: readonly AnyRule[]): AnyRule {
  const found = rules.find((rule) => rule.id === id);
  if (found !== undefined) return found;
  const near = didYouMean(
    nearestWord(
      id,
      rules.map((rule) => rule.id),
    ),
  );
  const hint = near ?? 'Run "cinchwright rules" to see them all.';
  throw new CliFault(`there is no rule called "${printable(id)}"`, { hint });
}

type Printer = (rules: readonly AnyRule[], options: ReportOptions) => Promise<string>;

const printers: Record<Format, Printer> = {
  table: async (rules, options) => (await import('../../report/rules-screen.ts')).rulesScreen(rules, options),
  json: async (rules) => (await import('../../report/rules-json.ts')).rulesJson(rules),
  csv: async (rules) => (await import('../../report/rules-csv.ts')).rulesCsv(rules),
  markdown: async (rules) => (await import('../../report/rules-markdown.ts')).rulesMarkdown(rules),
};
