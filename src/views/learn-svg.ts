/** A picture of what was learned: rubs by clearance, expected and actual. */
import type { Evidence } from '../learn/evidence.ts';
import type { Learned } from '../learn/learn.ts';
import { html } from '../pages/html.ts';
import { colors } from '../pages/look.ts';

const WIDE = 860;
const HIGH = 478;
const TOP = 74;
const PLOT = 300;

interface Panel {
  readonly left: number;
  readonly low: number;
  readonly high: number;
  /** Highest chance drawn. */
  readonly most: number;
}

const n = (value: number): string => String(Math.round(value * 10) / 10);
const x = ({ left, low, high }: Panel, value: number): number => left + (PLOT * (value - low)) / (high - low);
const y = ({ most }: Panel, chance: number): number => TOP + PLOT * (1 - Math.min(1, chance / most));

/** For print on white; never by color alone. */
export function learnSvg(learned: Learned): string {
  const { clearance, evidence, shop } = learned;
  const rubs: Panel = { left: 70, low: 0.5, high: 2.5, most: 1 };
  const highest = Math.max(
    0.1,
    ...clearance.bins.flatMap(({ high, after, before }) => [high, after, before]),
  );
  const most = Math.min(1, Math.ceil(highest * 5) / 5);
  const calibration: Panel = { left: 500, low: 0, high: most, most };
  const label = `Rubs by clearance, and rubs expected and actual, from ${String(evidence.length)} outcomes`;
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(WIDE)} ${String(HIGH)}" width="${String(WIDE)}" height="${String(HIGH)}" role="img" data-by="cinchwright" aria-label="${html(label)}" font-family="'Source Sans 3', Helvetica, Arial, sans-serif" font-size="13" fill="${colors.ink}">`,
    `<rect width="${String(WIDE)}" height="${String(HIGH)}" fill="${colors.white}"/>`,
    text(
      [70, 30],
      `${shop.name}: ${String(clearance.outcomes)} outcomes, ${String(clearance.complaints)} rubs`,
      'font-size="17" font-weight="600"',
    ),
    ...rubPanel(learned, rubs),
    ...calibrationPanel(learned, calibration),
    '</svg>',
  ].join('\n')}\n`;
}

function rubPanel({ curve, clearance, evidence }: Learned, panel: Panel): string[] {
  const path = (of: (point: Learned['curve'][number]) => number): string =>
    curve
      .map((point, i) => `${i === 0 ? 'M' : 'L'}${n(x(panel, point.clearance))} ${n(y(panel, of(point)))}`)
      .join('');
  const required = x(panel, clearance.after.value);
  return [
    text([panel.left, 58], 'Chance of a rub by clearance, average horse', 'font-weight="600"'),
    ...frame(panel, [0.5, 1, 1.5, 2, 2.5], (value) => `${String(value)} in`),
    `<rect x="${n(x(panel, Math.max(panel.low, clearance.after.low)))}" y="${n(TOP)}" width="${n(Math.max(1, x(panel, Math.min(panel.high, clearance.after.high)) - x(panel, Math.max(panel.low, clearance.after.low))))}" height="${n(PLOT)}" fill="${colors.sand}"/>`,
    `<path d="M${n(required)} ${n(TOP)}V${n(TOP + PLOT)}" stroke="${colors.rust}" stroke-width="1" fill="none"/>`,
    `<path d="${path(({ before }) => before)}" fill="none" stroke="${colors.soft}" stroke-width="1.5" stroke-dasharray="5 4"/>`,
    `<path d="${path(({ after }) => after)}" fill="none" stroke="${colors.rust}" stroke-width="2.5"/>`,
    ...evidence.flatMap((each) => tick(each, panel)),
    ...captions(panel, [
      'Dashed: before. Solid: after.',
      'Line and band: required clearance and its 90%.',
      'Ticks: clearance when tied; rubs above, good ones below.',
    ]),
  ];
}

function tick({ result, clearance }: Evidence, panel: Panel): string[] {
  const rubbed = result === 'elbow-rub' || result === 'buckle-rub';
  if (!rubbed && result !== 'good') return [];
  const at = Math.min(panel.high, Math.max(panel.low, clearance.value));
  const [from, to] = rubbed ? [TOP, TOP + 12] : [TOP + PLOT - 12, TOP + PLOT];
  return [
    `<path d="M${n(x(panel, at))} ${n(from)}V${n(to)}" stroke="${rubbed ? colors.rust : colors.soft}" stroke-width="1" stroke-opacity="0.7"/>`,
  ];
}

function calibrationPanel({ clearance }: Learned, panel: Panel): string[] {
  const steps = Array.from({ length: 5 }, (_, i) => (panel.most * i) / 4);
  // Overlapping marks stay visible.
  const { bins } = clearance;
  const marks = [
    ...bins.map(
      ({ after, low, high }) =>
        `<path d="M${n(x(panel, after))} ${n(y(panel, low))}V${n(y(panel, high))}" stroke="${colors.rust}" stroke-width="1.5"/>`,
    ),
    ...bins.map(
      ({ after, came }) =>
        `<circle cx="${n(x(panel, after))}" cy="${n(y(panel, came))}" r="4.5" fill="${colors.rust}" fill-opacity="0.5" stroke="${colors.rust}" stroke-width="1"/>`,
    ),
    ...bins.map(
      ({ before, came }) =>
        `<circle cx="${n(x(panel, before))}" cy="${n(y(panel, came))}" r="5.5" fill="none" stroke="${colors.soft}" stroke-width="1.5"/>`,
    ),
  ];
  return [
    text([panel.left, 58], 'Share of rubs: expected (across), actual (up)', 'font-weight="600"'),
    ...frame(panel, steps, (value) => `${String(Math.round(100 * value))}%`),
    `<path d="M${n(x(panel, 0))} ${n(y(panel, 0))}L${n(x(panel, panel.most))} ${n(y(panel, panel.most))}" stroke="${colors.soft}" stroke-width="1"/>`,
    ...marks,
    ...captions(panel, [
      'Ring: expected before. Dot: expected after.',
      'Upright line: the 90% of the actual share.',
      'On the slanted line, as many rubbed as were expected.',
    ]),
  ];
}

const captions = (panel: Panel, lines: readonly string[]): string[] =>
  lines.map((line, i) => text([panel.left, HIGH - 50 + 18 * i], line, 'font-size="12"'));

/** Chances go up the side. */
function frame(panel: Panel, steps: readonly number[], name: (value: number) => string): string[] {
  const sides = [0, 0.25, 0.5, 0.75, 1].map((share) => share * panel.most);
  return [
    ...sides.map(
      (chance) =>
        `<path d="M${n(panel.left)} ${n(y(panel, chance))}h${n(PLOT)}" stroke="${colors.line}" stroke-width="0.75"/>`,
    ),
    ...sides.map((chance) =>
      text(
        [panel.left - 8, y(panel, chance) + 4],
        `${String(Math.round(1000 * chance) / 10)}%`,
        'text-anchor="end" font-size="12"',
      ),
    ),
    ...steps.map((value) =>
      text([x(panel, value), TOP + PLOT + 18], name(value), 'text-anchor="middle" font-size="12"'),
    ),
  ];
}

const text = ([left, top]: readonly [number, number], words: string, more = ''): string =>
  `<text x="${n(left)}" y="${n(top)}" ${more}>${html(words)}</text>`;
