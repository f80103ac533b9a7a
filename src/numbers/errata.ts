/** Where sources disagree with each other, or with themselves, and which of them we go by. */
import type { SourceId } from './sources.ts';

export interface Erratum {
  readonly id: string;
  readonly sources: readonly SourceId[];
  /** What each says. */
  readonly says: string;
  /** What is done here, and why. */
  readonly here: string;
}

export const errata: readonly Erratum[] = [
  {
    id: 'strand-pitch',
    sources: ['strand-width', 'common-practice'],
    says: 'The encyclopedia gives 4 in for 17 strands and 7 in for 30, 0.235 in each; the trade counts half an inch for two, 0.25 in each.',
    here: '0.25 in, because it is what the bench ties by; the gap is the spread of the number.',
  },
  {
    id: 'girth-of-15.2-hands',
    sources: ['handbook-1905', 'height-girth-fit'],
    says: 'The handbook girths a 15.2 hands saddle horse at 70 to 73 in; the line through breed means says 75.2 in, and 74.6 in as it is used here.',
    here: 'The line, with its spread; it is not bent to meet the handbook. A tape decides.',
  },
  {
    id: 'girth-of-measured-horses',
    sources: ['measured-horses', 'height-girth-fit'],
    says: 'The line through breed means reads 1.15 in high on an open set of 52 light horses, which differ from their breeds by 6.4 cm, not 5.',
    here: 'We know that set second-hand only, so the line is moved by half the difference; their 6.4 cm are used, which asks for more care.',
  },
  {
    id: 'criollo-in-the-fit',
    sources: ['criollo-mares', 'height-girth-fit'],
    says: 'The line passes near the Criollo-type mares (180 cm at 142 cm), but they are among the means it was drawn through.',
    here: 'Their agreement is no check of the line. Their spread of 5 cm within a breed is the lesser of two, and is not used.',
  },
  {
    id: 'hoop-law-and-sensors',
    sources: ['hoop-law', 'garrigues-ramon-2021', 'werner-2002'],
    says: 'The law gives one pressure all round; sensors under bandages read up to 42 % below it. Limits were found for saddles, none for girths.',
    here: 'The pressure index only compares cinches with each other. It never says that one is safe, nor that one is poor.',
  },
  {
    id: 'bandage-constant',
    sources: ['bandage-law'],
    says: 'The formula for bandages has the constant 4620; recomputed it is 4621.65.',
    here: 'The law itself, in units that agree, needs no constant.',
  },
  {
    id: 'weight-divisor',
    sources: ['carroll-huntington-1988', 'wagner-tyler-2011', 'weight-exercise'],
    says: 'Girth^2 x length in cm is divided by 11 900 in the paper of 1988 and by 11 880 when that of 2011 quotes it; 330 in inches and pounds is 11 922 in cm and kg.',
    here: 'They differ by less than half a percent, far below the error of the method. No spec hangs on a weight.',
  },
  {
    id: 'girth-shape',
    sources: ['murray-2013', 'girth-shape-2025'],
    says: 'The paper of 2013 found less pressure and longer strides with another shape of girth; that of 2025 found little difference in the limbs.',
    here: 'The place of the pressure peak is used. No gain in stride is claimed.',
  },
  {
    id: 'cord-for-19-strands',
    sources: ['cord-need', 'cord-estimate'],
    says: 'The how-to takes 50 ft of cord for 17 strands but 70 ft for 19; the sum of passes gives 49 and 55 ft.',
    here: 'The sum. The 70 ft hold a margin for beginners.',
  },
  {
    id: 'length-up-to-even',
    sources: ['extension-length', 'usual-lengths'],
    says: 'The extension rule rounds girth / 2 - 3 up to a whole inch; the trade keeps lengths in steps of 2 in.',
    here: 'Up to an even number, which is our choice: the length to check by is one the shop keeps, at most 1 in over the rule.',
  },
  {
    id: 'gum-h2-reactance',
    sources: ['gum', 'propagate'],
    says: 'The printed u(X) of example H.2 is 0.295; from the printed data it is 0.2956, which rounds to 0.296.',
    here: 'Tests take the data and 0.2956.',
  },
  {
    id: 'jcgm-101-9.4-sign',
    sources: ['gum-supplement-1', 'propagate'],
    says: 'Example 9.4 is X1^2 + X2^2; the help page of the package writes X1^2 - X2^2, with the same first-order spread but another mean.',
    here: 'The sum, as in the guide.',
  },
  {
    id: 'boost-columns',
    sources: ['boost'],
    says: 'The head of the file calls its columns k, phi, E(k, phi); they are phi, k, E(phi, k).',
    here: 'Read as phi, k, E; every row then agrees with an independent evaluation.',
  },
  {
    id: 'a-and-s-e-0.99',
    sources: ['a-and-s'],
    says: 'Table 17.1 as transcribed ends E(0.99) with ...3546; the value is 1.0159935450, one less in the ninth decimal.',
    here: 'That one row is allowed a whole unit of its last place.',
  },
  {
    id: 'chvatal-width',
    sources: ['chvatal-1983', 'sas-or'],
    says: 'The book has a width of 36 where the page prints 35.',
    here: '36: with it the published optimum of 453 comes out.',
  },
];
