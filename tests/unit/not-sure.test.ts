/** A cinch that is not sure is told so on every paper, and a tape is asked for only where one could tell. */
import { describe, expect, test } from 'vitest';
import { run } from '../support/run-cli.ts';

const order = (wants: string, horse = 'elbow-room: 2.6 in', saddle = 'rigging: full'): string => `order: 7
horse: { name: Wren, heart-girth: 73 in, ${horse} }
saddle: { ${saddle}, style: flat-plate, ring-to-ring: 44 in }
use: trail
${wants === '' ? '' : `wants: { ${wants} }\n`}`;
const said = async (args: string, text: string): Promise<string> =>
  (await run(args.split(' '), { stdin: text })).stdout.replace(/\s+/g, ' ');

describe('taped at the elbow', () => {
  const taped = order('style: low-flare');
  test('the screen says it once, and that it was asked for', async () => {
    const screen = await said('size -', taped);
    expect(screen).toContain('NOT SURE. The best we can tie is a low flare, 19 strands');
    expect(screen).toContain('That is what was asked for.');
    expect(screen).toContain('Low flare: it has the strands, but may not clear the elbow.');
    expect(screen).not.toMatch(/before you tie/);
  });
  test('quote, message and ticket say it too', async () => {
    const quote = await said('quote - --date 2026-11-30', taped);
    expect(quote).toContain('Not sure: the best we can tie is a low flare, 19 strands');
    expect(quote).toContain('That is what you asked for.');
    expect(quote).not.toMatch(/We suggest|clears the elbow/);
    const message = await said('quote - --date 2026-11-30 --format text', taped);
    expect(message).toContain('We are not sure that it clears the elbow: the chance is less than even.');
    const ticket = await said('ticket - --date 2026-11-30', taped);
    expect(ticket).toMatch(/Ask first .* - NOT SURE\. The chance to clear the elbow is \d\d%\. - /);
  });
  test('and so does the list of what to ask', async () => {
    expect(await said('ask - --draws 8', taped)).toMatch(/For now, not sure: a low flare, 19 strands/);
  });
  test('a second best is quoted as chosen', async () => {
    const second = await said('quote - --date 2026-11-30 --spec 2', order(''));
    expect(second).toContain('Not sure: we quote ');
  });
});

test('our pick on another buckle is not what was asked for', async () => {
  const horse = 'height: 15.1 hh, elbow-room: 4 in';
  const on = (buckle: string): string =>
    order(`style: straight, strands: 19, buckle: ${buckle}`, horse, 'rigging: 7/8');
  expect(await said('size -', on('plain 3'))).toContain('That is what was asked for.');
  expect(await said('size -', on('plain 3 1/2'))).not.toContain('That is what was asked for.');
});

test('where a tape could tell, it is asked for', async () => {
  const open = order('style: high-flare, strands: 19', 'height: 15.1 hh');
  expect(await said('size -', open)).toMatch(
    /A high flare, 19 strands, as asked: not sure, .*%\)\. Measure before you tie it\./,
  );
  expect(await said('ticket - --date 2026-11-30 --style high-flare', open)).toMatch(
    /NOT SURE\. The chance to clear the elbow is \d\d%: measure ring set-back or elbow room before you tie\./,
  );
});
