/** An invented order of about sixty lines, by seed and number. */
import { seededRandom, type Random } from '../../../src/math/random.ts';
import { around, byShare, happens, maybe, pick, whole } from '../draw.ts';
import { drawHorse, type DrawnHorse } from './horse.ts';
import { drawCinch, drawSaddle, type DrawnCinch, type DrawnSaddle } from './saddle.ts';
import {
  familyEnds,
  familyStarts,
  firstNames,
  horseNames,
  horseStarts,
  remarks,
  reminders,
} from './words.ts';
import { block, folded, heightText, lengthText, line, words, type Writer } from './write.ts';

const bodies = { natural: 8, charcoal: 5, chestnut: 3, sorrel: 1, buckskin: 1 };
/** Of the notes. */
const columns = 44;
const accents = { rust: 3, black: 3, turquoise: 2, natural: 1, sage: 1 };

const habits = { inches: 70, centimeters: 15, mixed: 15 };

export function truthOf(seed: number, number: number): { horse: DrawnHorse; saddle: DrawnSaddle } {
  const random = seededRandom(seed, number);
  byShare(random, habits);
  const horse = drawHorse(random);
  return { horse, saddle: drawSaddle(random, horse) };
}

export function orderText(seed: number, number: number): string {
  const random = seededRandom(seed, number);
  const habit = byShare(random, habits);
  const writer: Writer = { random, habit };
  const horse = drawHorse(random);
  const saddle = drawSaddle(random, horse);
  /** By the customer, 0 to 1. */
  const known = random.uniform();
  const lines = [
    '# Invented: the shop, the people and the horses of this backlog are made up.',
    `# Written by "npm run make-backlog", seed ${seed}, number ${number}.`,
    `order: B-${String(number).padStart(6, '0')}`,
    ...customerLines(writer),
    ...dateLines(writer),
    '',
    `# The horse${habit === 'centimeters' ? ', in centimeters' : ''}.`,
    ...block('horse', horseLines(horse, known, writer)),
    '',
    `# The saddle: ${known > 0.6 ? 'taped' : 'as it was told'}.`,
    ...block('saddle', saddleLines(saddle, known, writer)),
    '',
    ...(happens(random, 0.9) ? line('use', horse.use, writer) : []),
    ...cinches(horse, saddle, writer),
    ...colorLines(writer),
  ];
  return `${[...lines, ...noteLines(60 - lines.length, random)].join('\n')}\n`;
}

function customerLines(writer: Writer): string[] {
  const { random } = writer;
  const first = pick(random, firstNames);
  const family = `${pick(random, familyStarts)}${pick(random, familyEnds)}`;
  // 555 0100 to 0199 and the domain (RFC 2606) are reserved for invented people.
  const phone = `555 01${String(whole(random, 0, 99)).padStart(2, '0')}`;
  const mail = `${family.toLowerCase()}${whole(random, 1, 999)}@example.invalid`;
  return block('customer', [
    `name: ${first} ${family}`,
    ...(happens(random, 0.8) ? [`phone: ${happens(random, 0.5) ? `"${phone}"` : phone}`] : []),
    ...(happens(random, 0.7) ? [`email: ${mail}`] : []),
  ]);
}

function dateLines(writer: Writer): string[] {
  const { random } = writer;
  const taken = whole(random, 0, 330);
  return [
    ...line('taken', dayText(taken), writer),
    ...(happens(random, 0.8) ? line('due', dayText(taken + whole(random, 7, 70)), writer) : []),
    ...(happens(random, 0.4) ? [`quantity: ${byShare(random, { '1': 8, '2': 3, '4': 1 })}`] : []),
  ];
}

/** Days from January 1, 2026. */
const dayText = (days: number): string =>
  new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 'yyyy-mm-dd'.length);

/** Likelier the more the customer knows; some open ones stay as reminders. */
const toldBy =
  (known: number, { random }: Writer) =>
  (key: string, chance: number, lines: () => string[]): string[] => {
    if (happens(random, chance * (0.4 + known))) return lines();
    return happens(random, 0.4) ? [`# ${key}: ${pick(random, reminders)}`] : [];
  };

function horseLines(horse: DrawnHorse, known: number, writer: Writer): string[] {
  const { random } = writer;
  const girthTaped = happens(random, 0.45 + 0.5 * known);
  const heightKnown = !girthTaped || happens(random, 0.8);
  const told = toldBy(known, writer);
  const length = (inches: number): string => lengthText(inches, writer);
  return [
    `name: ${pick(random, horseStarts)}${pick(random, horseNames)}`,
    ...(heightKnown ? line('height', heightText(horse.height, writer), writer) : []),
    ...(girthTaped ? line('heart-girth', length(horse.girth), writer) : []),
    ...told('body-length', 0.15, () => line('body-length', length(horse.bodyLength), writer)),
    ...told('elbow-room', horse.elbowRoom < 3 ? 0.8 : 0.5, () =>
      line('elbow-room', length(horse.elbowRoom), writer),
    ),
    ...told('barrel', 0.7, () => barrelLines(horse, writer)),
    ...told('withers', 0.6, () => line('withers', horse.withers, writer)),
    ...told('condition', 0.6, () => line('condition', String(horse.condition), writer)),
    ...told('kind', 0.9, () => line('kind', horse.kind, writer)),
    ...words('trouble', horse.trouble, writer),
  ];
}

/** A word, or a depth that fits the girth. */
function barrelLines({ barrel, girth }: DrawnHorse, writer: Writer): string[] {
  const depth = maybe(writer.random, 0.07, () => lengthText(girth * 0.37, writer));
  return depth === undefined ? line('barrel', barrel, writer) : block('barrel', [`depth: ${depth}`]);
}

function saddleLines(saddle: DrawnSaddle, known: number, writer: Writer): string[] {
  const { random } = writer;
  const told = toldBy(known, writer);
  const length = (inches: number): string => lengthText(inches, writer);
  const setBack = Math.max(0.25, saddle.setBack);
  const rigging = happens(random, 0.25 * known)
    ? block('rigging', [`set-back: ${length(setBack)}`])
    : line('rigging', saddle.position, writer);
  return [
    ...rigging,
    ...told('style', 0.8, () => line('style', saddle.style, writer)),
    ...told('bar-span', 0.35, () => line('bar-span', length(saddle.barSpan), writer)),
    ...told('ring-to-ring', 0.7, () => line('ring-to-ring', length(saddle.ringToRing), writer)),
    ...told('ring-drop', 0.25, () => line('ring-drop', length(saddle.ringDrop), writer)),
    ...told('double', 0.6, () => line('double', String(saddle.double), writer)),
  ];
}

function cinches(horse: DrawnHorse, saddle: DrawnSaddle, writer: Writer): string[] {
  const { random } = writer;
  const now = maybe(random, 0.55, () => drawCinch(random, horse, saddle));
  const asked = maybe(random, 0.45, () => drawCinch(random, horse, saddle));
  return [
    ...(now === undefined ? [] : ['', '# What it wears now.', ...current(now, writer)]),
    ...(asked === undefined
      ? []
      : ['', '# What the customer thinks of.', ...block('wants', cinchLines(asked, writer))]),
  ];
}

function current(cinch: DrawnCinch, writer: Writer): string[] {
  const { random } = writer;
  const age = happens(random, 0.7) ? `${whole(random, 1, 9)} y` : `${whole(random, 2, 30)} months`;
  return block('current', [...cinchLines(cinch, writer), ...(happens(random, 0.6) ? [`age: ${age}`] : [])]);
}

function cinchLines({ style, strands, length, buckle }: DrawnCinch, writer: Writer): string[] {
  const { random } = writer;
  return [
    ...(happens(random, 0.85) ? line('style', style, writer) : []),
    ...line('strands', String(strands), writer),
    ...(happens(random, 0.3) ? [`buckle: ${buckle}`] : []),
    ...(happens(random, 0.7) ? line('length', lengthText(length, writer), writer) : []),
  ];
}

function colorLines(writer: Writer): string[] {
  const { random } = writer;
  if (happens(random, 0.15)) return [];
  const body = byShare(random, bodies);
  const second = happens(random, 0.2) ? byShare(random, bodies) : body;
  const accent = maybe(random, 0.6, () => byShare(random, accents));
  return [
    '',
    ...block('colors', [
      ...words('body', [...new Set([body, second])], writer),
      ...words('accent', accent === undefined ? [] : [accent], writer),
    ]),
  ];
}

/** Those who know little often say much. */
function noteLines(room: number, random: Random): string[] {
  const wanted = Math.max(2, Math.round(around(random, { mean: room - 2, sd: 3 })));
  const left: string[] = [...remarks];
  const said: string[] = [];
  while (left.length > 0 && folded(said, columns).length < wanted) {
    said.push(...left.splice(whole(random, 0, left.length - 1), 1));
  }
  return ['', 'notes: |', ...folded(said, columns).map((text) => `  ${text}`)];
}
