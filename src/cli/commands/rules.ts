/** `rules`: what judges cinches, and who says so. */
import type { Command } from 'commander';
import type { AnyRule } from '../../rules/rule.ts';
import { nearestWord } from '../../units/nearest.ts';
import { CliFault, didYouMean, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { formatOption } from '../options.ts';
import { printViews, type Format } from '../print.ts';
import type { Session } from '../program.ts';

interface RulesOptions {
  format: Format;
  color: boolean;
}

const examples = `
  cinchwright rules
  cinchwright rules elbow-clearance`;

/** Adds the command. */
export function addRules(program: Command, session: Session): void {
  program
    .command('rules')
    .summary('what each check looks at')
    .description('Lists the checks, or shows one in full: its question, reasons and examples.')
    .argument('[id]', 'one rule')
    .addOption(formatOption('pdf'))
    .addHelpText('after', examples)
    .action(async (id: string | undefined, _: unknown, command: Command) => {
      session.code = await tellRules(id, command.optsWithGlobals(), session.io);
    });
}

async function tellRules(id: string | undefined, options: RulesOptions, io: CliIo): Promise<ExitCode> {
  const { rules } = await import('../../rules/registry.ts');
  const chosen = id === undefined ? rules : [ruleOf(id, rules)];
  await printViews(
    {
      sheets: async () => {
        const { ruleSheet, rulesSheet } = await import('../../views/rules-sheet.ts');
        return id === undefined ? [rulesSheet(rules)] : chosen.map(ruleSheet);
      },
      json: async () => (await import('../../views/rules-data.ts')).rulesJson(chosen),
      csv: async () => (await import('../../views/rules-data.ts')).rulesCsv(chosen),
    },
    options,
    io,
  );
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
