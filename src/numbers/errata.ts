/** Where sources disagree, and which one we use. */
import type { SourceId } from './sources.ts';

export interface Erratum {
  readonly id: string;
  readonly sources: readonly SourceId[];
  readonly says: string;
  /** What we use, and why. */
  readonly here: string;
}

export const errata: readonly Erratum[] = [
  {
    id: 'strand-pitch',
    sources: ['strand-width', 'common-practice'],
    says: 'An encyclopedia gives 4 in for 17 strands and 7 in for 30, 0.235 in each; the trade counts two to half an inch.',
    here: '0.25 in, as the bench ties; the gap is its spread.',
  },
  {
    id: 'girth-of-15.2-hands',
    sources: ['handbook-1905', 'height-girth-fit'],
    says: 'The handbook girths a 15.2 hands saddle horse at 70 to 73 in; the line through breed averages says 75.2 in, as used here 74.6 in.',
    here: 'The line, with its spread. A tape decides.',
  },
  {
    id: 'girth-of-measured-horses',
    sources: ['measured-horses', 'height-girth-fit'],
    says: 'The line reads 1.15 in high on an open set of 52 light horses, which differ from their breeds by 6.4 cm, not 5.',
    here: 'We know that set second-hand, so the line moves by half the difference. We use the 6.4 cm, the more careful.',
  },
  {
    id: 'criollo-in-the-fit',
    sources: ['criollo-mares', 'height-girth-fit'],
    says: 'The line passes near the Criollo-type mares (180 cm at 142 cm), but it was drawn through them.',
    here: 'They do not check the line. Their spread of 5 cm is the smaller of two, and not used.',
  },
  {
    id: 'hoop-law-and-sensors',
    sources: ['hoop-law', 'garrigues-ramon-2021', 'werner-2002'],
    says: 'The law gives one pressure all around; sensors under bandages read up to 42% less. We found limits for saddles, none for girths.',
    here: 'The pressure index only compares cinches. It calls none safe and none poor.',
  },
  {
    id: 'bandage-constant',
    sources: ['bandage-law'],
    says: 'The bandage formula has the constant 4620; recomputed, 4621.65.',
    here: 'The law itself, which needs no constant.',
  },
  {
    id: 'weight-divisor',
    sources: ['carroll-huntington-1988', 'wagner-tyler-2011', 'weight-exercise'],
    says: 'Girth^2 x length in cm is divided by 11 900 in the 1988 paper, by 11 880 as quoted in 2011; 330 in inches and pounds is 11 922.',
    here: 'They differ by less than half a percent. No spec depends on a weight.',
  },
  {
    id: 'girth-shape',
    sources: ['murray-2013', 'girth-shape-2025'],
    says: 'The 2013 paper found less pressure and longer strides with another girth shape; the 2025 paper found little difference in the limbs.',
    here: 'We use the place of the pressure peak and claim no gain in stride.',
  },
  {
    id: 'cord-for-19-strands',
    sources: ['cord-need', 'cord-estimate'],
    says: 'The how-to takes 50 ft of cord for 17 strands but 70 ft for 19; our sum gives 49 and 55 ft.',
    here: 'The sum. The 70 ft includes a margin for beginners.',
  },
  {
    id: 'length-up-to-even',
    sources: ['extension-length', 'usual-lengths'],
    says: 'The extension rule rounds girth / 2 - 3 up to a whole inch; the trade keeps lengths in 2 in steps.',
    here: 'Up to an even number (our choice), at most 1 in over the rule.',
  },
  {
    id: 'gum-h2-reactance',
    sources: ['gum', 'propagate'],
    says: 'Example H.2 prints u(X) as 0.295; its data give 0.2956.',
    here: '0.2956.',
  },
  {
    id: 'jcgm-101-9.4-sign',
    sources: ['gum-supplement-1', 'propagate'],
    says: "Example 9.4 is X1^2 + X2^2; the package's help page writes X1^2 - X2^2, with the same first-order spread but another mean.",
    here: 'The sum, as in the guide.',
  },
  {
    id: 'boost-columns',
    sources: ['boost'],
    says: "The file's header calls its columns k, phi, E(k, phi); they are phi, k, E(phi, k).",
    here: 'Read as phi, k, E; then every row agrees with an independent evaluation.',
  },
  {
    id: 'a-and-s-e-0.99',
    sources: ['a-and-s'],
    says: 'Table 17.1 as transcribed ends E(0.99) in ...3546; the value is 1.0159935450.',
    here: 'That row is allowed a whole unit in its last place.',
  },
  {
    id: 'chvatal-width',
    sources: ['chvatal-1983', 'sas-or'],
    says: 'The book has a width of 36; the page prints 35.',
    here: '36, which gives the published optimum of 453.',
  },
];
