/** `size` for scripts: keys, specs and verdicts. */
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { unguard } from '../../src/pages/csv.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import { rules } from '../../src/rules/registry.ts';
import { sizeCsv, sizeJson } from '../../src/views/size-data.ts';
import type { SizeResult } from '../../src/words/types.ts';
import { cases, failed, plainOptions, sized } from './report-cases.ts';

const names = Object.keys(cases) as (keyof typeof cases)[];

describe('json', () => {
  const read = (
    results: readonly SizeResult[],
    depth: Partial<ReportOptions> = { all: true },
  ): { schema: string; results: Record<string, never>[] } =>
    JSON.parse(sizeJson(results, { ...plainOptions, ...depth })) as never;

  test('has the keys of the contract, in this order', () => {
    const document = read([sized(cases.gall)]);
    const [result] = document.results;
    expect(document.schema).toBe('cinchwright/size/1');
    expect(Object.keys(result!)).toEqual([
      'order',
      'file',
      'verdict',
      'reason',
      'lengthBasis',
      'assumptions',
      'room',
      'welfare',
      'passing',
      'specs',
      'otherStyles',
      'refused',
      'ask',
      'cautions',
      'wants',
    ]);
    const keys = (list: string): string[] => Object.keys((result![list] as unknown as object[])[0]!);
    expect(keys('assumptions')).toEqual(['input', 'value', 'unit', 'basis', 'sd', 'kind']);
    expect(Object.keys(result!['room']!)).toEqual(['inches', 'sd', 'basis']);
    expect(keys('otherStyles')).toEqual(['style', 'rank', 'strands', 'chance', 'text']);
    const [{ clearance }] = result!['specs']! as [{ clearance: object }];
    expect(Object.keys(clearance)).toEqual(['inches', 'sd', 'floor', 'chance', 'station', 'front']);
    expect(keys('specs')).toEqual(
      expect.arrayContaining([
        'rank',
        'style',
        'strands',
        'layers',
        'width',
        'buckleWidth',
        'flareStart',
        'length',
        'buckle',
        'clearance',
        'becauseOf',
        'findings',
      ]),
    );
  });

  test('without a wish there is no key for it; a straight has no flare; results stay in order', () => {
    const { results } = read([failed, sized(cases.measured)]);
    expect(results[0]).toMatchObject({ order: '99', file: 'bad.yaml', error: { problems: [{ line: 4 }] } });
    expect(results[1]).not.toHaveProperty('wants');
    expect(results[1]!['specs']![0]).toMatchObject({ rank: 1, style: 'straight', flareStart: null });
  });

  test.each(names)('%s: of each other style its best, null where none passes, and why', (name) => {
    const [result] = read([sized(cases[name])]).results;
    const specs = result!['specs']! as { style: string; clearance: { chance: number } }[];
    const styles = ['straight', 'high-flare', 'low-flare'].filter((style) => style !== specs[0]?.style);
    const none = { rank: null, strands: null, clearance: { chance: null } };
    expect(result!['otherStyles']).toEqual(
      styles.map((style) => {
        const { rank, strands, clearance } = { ...none, ...specs.find((spec) => spec.style === style) };
        return {
          style,
          rank,
          strands,
          chance: clearance.chance,
          text: expect.stringMatching(/./) as unknown,
        };
      }),
    );
  });

  test('welfare is there only where something must come before any cinch', () => {
    const told = (name: keyof typeof cases): unknown => read([sized(cases[name])]).results[0]!['welfare'];
    expect(told('gall')).toEqual([expect.stringMatching(/^GALLED AT THE ELBOW\. /)]);
    expect(told('nothing')).toEqual([expect.stringContaining('1.75 in'), expect.any(String)]);
    expect(told('measured')).toBeUndefined();
  });

  test.each(names)('%s: few specs and only what is less than good, unless all are asked for', (name) => {
    const result = sized(cases[name]);
    const specs = (depth: Partial<ReportOptions>) =>
      read([result], depth).results[0]!['specs']! as {
        standing: string;
        findings: { rule: string; judgement: string }[];
      }[];
    const [few, all, full] = [specs({ top: 2 }), specs({ all: true }), specs({ all: true, why: true })];
    expect(few).toEqual(all.slice(0, 2));
    expect(all).toHaveLength(result.advice.specs.length);
    for (const [i, { findings, standing }] of full.entries()) {
      expect(findings.map(({ rule }) => rule)).toEqual(rules.map(({ id }) => id));
      const told = findings.filter(({ judgement }) => /acceptable|poor|cannot-tell|refuse/.test(judgement));
      expect(all[i]!.findings).toEqual(told);
      const elbow = findings.find(({ rule }) => rule === 'elbow-clearance');
      if (elbow?.judgement === 'poor') expect(standing).toBe('not sure');
    }
    const passing = all.filter(({ standing }) => standing === 'passes').length;
    expect(read([result], {}).results[0]!['passing']).toBe(passing);
  });

  test('an order that is not known is null', () => {
    expect(read([{ ...failed, order: undefined }]).results[0]).toMatchObject({ order: null });
  });
});

describe('csv', () => {
  test.each(names)('%s: read back it equals the JSON', (name) => {
    const result = sized(cases[name]);
    const all = { ...plainOptions, all: true };
    const rows = parse(sizeCsv([result], all), { columns: true }) as unknown as Record<string, string>[];
    const { results } = JSON.parse(sizeJson([result], all)) as {
      results: { specs: Record<string, unknown>[] }[];
    };
    const { specs } = results[0]!;
    if (specs.length === 0) {
      expect(rows).toHaveLength(1);
      expect(rows[0]).toMatchObject({
        verdict: 'none fits',
        rank: '',
        reason: expect.stringContaining(', ') as unknown,
      });
      return;
    }
    const number = (text = ''): number | null => (text === '' ? null : Number(text));
    expect(specs).toMatchObject(
      rows.map((row) => ({
        rank: number(row['rank']),
        style: row['style'],
        strands: number(row['strands']),
        layers: number(row['layers']),
        width: number(row['width_in']),
        buckleWidth: number(row['buckle_width_in']),
        flareStart: number(row['flare_start_in']),
        length: number(row['length_in']),
        buckle: unguard(row['buckle'] ?? ''),
        clearance: {
          inches: number(row['clearance_in']),
          sd: number(row['clearance_sd_in']),
          chance: number(row['chance']),
        },
      })),
    );
  });

  test('failed orders have a row', () => {
    const rows = parse(sizeCsv([failed], plainOptions), { columns: true }) as unknown as Record<
      string,
      string
    >[];
    expect(rows).toEqual([expect.objectContaining({ order: '99', verdict: 'faulty' })]);
  });
});
