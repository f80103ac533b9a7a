/** Prints each mutant that no test noticed, and totals by folder. */
import fs from 'node:fs';

function shown({ fileName, location: { start, end }, mutatorName, replacement, status }) {
  const line = fs.readFileSync(fileName, 'utf8').split('\n')[start.line - 1] ?? '';
  const was = line.slice(start.column - 1, start.line === end.line ? end.column - 1 : undefined);
  const now = (replacement ?? '').replace(/\s+/g, ' ').slice(0, 120);
  return `${fileName.slice(fileName.indexOf('src/'))}:${start.line}:${start.column} ${status} ${mutatorName}: ${was} => ${now}\n`;
}

class Survivors {
  counts = {};

  onMutantTested(mutant) {
    this.counts[mutant.status] = (this.counts[mutant.status] ?? 0) + 1;
    if (mutant.status === 'Survived' || mutant.status === 'NoCoverage' || mutant.status === 'Timeout')
      process.stdout.write(shown(mutant));
  }

  onMutationTestReportReady() {
    const {
      Killed = 0,
      Timeout = 0,
      Survived = 0,
      NoCoverage = 0,
      Ignored = 0,
      RuntimeError = 0,
    } = this.counts;
    const all = Killed + Timeout + Survived + NoCoverage;
    const score = ((100 * (Killed + Timeout)) / all).toFixed(1);
    process.stdout.write(
      `src/${process.env.MUTATED}: ${all} mutants, ${Killed + Timeout} killed (${Timeout} by never ending), ` +
        `${Survived + NoCoverage} survived (${NoCoverage} where no test goes), score ${score} %; ${Ignored} left out, ${RuntimeError} errors\n`,
    );
  }
}

export const strykerPlugins = [{ kind: 'Reporter', name: 'survivors', injectableClass: Survivors }];
