/** Every book, paper, standard, table and practice we use. */

/** `choice` is ours; `practice` is the trade's. */
export type SourceKind = 'book' | 'paper' | 'standard' | 'table' | 'practice' | 'choice';

/**
 * `seen`: we opened the text. `seen second-hand`: quoted in one we opened. `memory`: not looked up.
 * `derived`: from a published formula. `unwritten`: no text.
 */
export type HowKnown = 'seen' | 'seen second-hand' | 'memory' | 'derived' | 'unwritten';

export interface Source {
  readonly kind: SourceKind;
  /** Author and subject, not always the printed title. */
  readonly title: string;
  readonly year?: number;
  readonly where?: string;
  readonly how: HowKnown;
}

type Place = Pick<Source, 'year' | 'where'>;

const entry =
  (kind: SourceKind) =>
  (how: HowKnown, title: string, place: Place = {}): Source => ({ kind, how, title, ...place });

const book = entry('book');
const paper = entry('paper');
const standard = entry('standard');
const table = entry('table');
const practice = entry('practice');

const entries = {
  // Ourselves and the trade
  'engineering-choice': entry('choice')(
    'unwritten',
    'Our own choice, checked against the strand counts makers tie',
  ),
  'common-practice': practice('unwritten', 'Common practice of the trade'),

  // Horse
  hand: practice(
    'seen second-hand',
    'A hand is four inches; the digit after the point counts inches, 0 to 3',
  ),
  'weight-exercise': practice(
    'seen',
    'University of Minnesota equine laboratory exercise: pounds = girth^2 x length / 330',
  ),
  'carroll-huntington-1988': paper(
    'memory',
    'Carroll & Huntington: weight of horses from girth and length, divisor 11 900',
    {
      year: 1988,
      where: 'Equine Vet J',
    },
  ),
  'wagner-tyler-2011': paper(
    'memory',
    'Wagner & Tyler: estimates of weight in adult horses, divisor 11 880',
    { year: 2011 },
  ),
  'height-girth-fit': table('derived', 'Our line through published breed averages of height and heart girth'),
  'measured-horses': table(
    'seen second-hand',
    'An open set of 52 measured light horses: the line reads 1.15 in high, sd within a breed 6.4 cm',
  ),
  'criollo-mares': paper('seen', 'Measurements of Criollo-type mares: 142 cm high, girth 180 cm, sd 5'),
  'soviet-draft': table(
    'seen second-hand',
    'Measurements of the Soviet heavy draft: 161 cm high, girth 210.9 cm',
  ),
  'handbook-1905': book('seen', 'A handbook of the horse: a 15.2 hands saddle horse girths 70 to 73 inches', {
    year: 1905,
  }),
  'henneke-1983': paper('memory', 'Henneke et al.: condition score of horses, 1 to 9', {
    year: 1983,
    where: 'Equine Vet J 15:371',
  }),
  'carter-2009': paper('memory', 'Carter et al.: a horse is obese from a girth-to-height ratio of 1.26', {
    year: 2009,
    where: 'Vet J 179:204',
  }),
  'human-bodies': table(
    'seen second-hand',
    'An open set of measured human bodies: width over depth of the chest, sd 0.07',
  ),

  // Girths under the horse
  'girth-tension': paper(
    'seen second-hand',
    'Bowers & Slocombe: girth strap tension on racehorses, usually 13 kgf',
    {
      year: 1999,
    },
  ),
  'werner-2002': paper(
    'seen',
    'Werner et al.: pressure under saddles, mean 13.2 and maximum 34.5 kPa (abstract)',
    {
      year: 2002,
    },
  ),
  'murray-2013': paper(
    'seen',
    'Murray et al.: girth pressure peaks over the muscle behind the elbow (abstract); paid for by, or done with, the maker of the girth it favors (memory)',
    {
      year: 2013,
    },
  ),
  'girth-shape-2025': paper('seen', 'Straight and shaped girths change limb movement little (abstract)', {
    year: 2025,
    where: 'Animals 15(17), 2540',
  }),
  'greve-dyson-2013': paper(
    'seen',
    'Greve & Dyson: the saddle slips on 54% of hindlimb-lame horses and on 0 of 11 sound ones (abstract)',
    {
      year: 2013,
    },
  ),
  'millares-ramirez-2019': paper(
    'seen',
    'Millares-Ramirez & Le Jeune: of 37 girthy horses 12 ulcers, 10 orthopedic, 3 saddle',
    {
      year: 2019,
    },
  ),
  'freitag-2021': paper(
    'seen second-hand',
    'Freitag et al.: horses measured in photographs, variation under 2.7% with markers',
    {
      year: 2021,
    },
  ),

  // Cinch and cord
  'extension-length': practice(
    'seen',
    'Extension Horses: length of a western cinch is girth / 2 - 3, rounded up; 70 in gives 32',
  ),
  'strand-width': practice(
    'seen second-hand',
    'Encyclopedia article on girths: 17 strands 4 in, 30 strands 7 in',
  ),
  'cord-need': practice(
    'seen',
    'A craft how-to: 17 strands take 50 ft of 8-ply and 20 ft of 2-ply, 19 strands 70 ft',
  ),
  'cord-estimate': table(
    'derived',
    "Our sum of passes, knots and tails plus 15%, which matches the how-to's 50 and 20 ft",
  ),
  layers: practice('seen', 'Page by two horse-care authors: single to about 17 strands, double for 27 to 31'),
  'usual-lengths': practice(
    'seen',
    "A how-to and a saddlemakers' forum: lengths in 2 in steps, most 30 to 34, 26 to 28 under dropped rigging",
  ),
  'mohair-data': table(
    'seen',
    'Museum of Fine Arts, Boston, materials database: mohair 1.32 g/cm3, regain 13%, stretches 30%',
  ),
  'bench-price': practice(
    'seen',
    "A saddlemakers' trade association: worked example of a price at the bench",
  ),

  // Mechanics
  'hoop-law': table(
    'derived',
    'Thin-wall hoop (Laplace): pressure = tension / (width x radius of curvature)',
  ),
  'bandage-law': paper('seen', 'Thomas: the law of Laplace for bandages, P = 4620 T n / (C W)', {
    year: 2003,
  }),
  'garrigues-ramon-2021': paper(
    'seen second-hand',
    'Garrigues-Ramon et al.: sensors under bandages read up to 42% below the law',
    {
      year: 2021,
      where: 'J Wound Care 30(4):276',
    },
  ),

  // Mathematics
  'a-and-s': book('seen second-hand', 'Abramowitz & Stegun: Handbook of Mathematical Functions', {
    year: 1964,
    where: 'chapters 17 and 26, tables 17.1, 17.6 and 25.4',
  }),
  gsl: table('seen', 'GNU Scientific Library: test values of the special functions'),
  boost: table('seen', 'Boost.Math: test data of the elliptic integrals, 165 rows kept here', {
    year: 2006,
    where: 'boostorg/math@bb1fbff2 test/ellint_e2_data.ipp and ellint_e_data.ipp',
  }),
  cephes: table('seen', 'Cephes (Moshier): special functions, run against ours in tests'),
  'oneill-2014': paper('memory', "O'Neill: PCG, a family of random number generators", {
    year: 2014,
    where: 'HMC-CS-2014-0905',
  }),
  wgs84: standard('memory', 'World Geodetic System 1984: axes of the Earth and its quarter meridian'),

  // Units, uncertainty, shop
  'nist-sp811': standard('memory', 'NIST SP 811: an inch is 2.54 cm exactly', { where: 'appendix B' }),
  gum: standard('seen second-hand', 'JCGM 100: guide to the expression of uncertainty in measurement', {
    year: 2008,
    where: 'H.1, H.2',
  }),
  'gum-supplement-1': standard('seen second-hand', 'JCGM 101: propagation of distributions by Monte Carlo', {
    year: 2008,
    where: '9.2 to 9.4',
  }),
  propagate: table('seen', "R package propagate: the GUM's examples, data and help pages", {
    where: 'cran/propagate@60718ff2',
  }),
  pinhole: table('derived', 'Pinhole geometry: scale errors of depth, yaw and roll in a photograph'),
  'paper-mill': table(
    'seen',
    'Encyclopedia article on cutting stock: 13 widths from a master of 5600, best 73 masters',
  ),
  'chvatal-1983': book(
    'seen second-hand',
    'Chvatal: Linear Programming, cutting stock example of chapter 13',
    {
      year: 1983,
    },
  ),
  'sas-or': table('seen', 'A SAS/OR page with the same cutting stock example'),
  'moore-1968': paper('memory', 'Moore: sequencing jobs so that the fewest are late', { year: 1968 }),
  'rfc-4180': standard('memory', 'RFC 4180: comma-separated values', { year: 2005 }),
  'iso-4217': standard('memory', 'ISO 4217: currency codes and their decimals'),
  'owasp-html': practice('memory', 'OWASP: the five characters to escape in HTML'),
  'owasp-csv': practice('seen', 'OWASP: cell starts that a spreadsheet runs as a formula'),
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof entries;

export const sources: Readonly<Record<SourceId, Source>> = entries;

export const sourceList: readonly (Source & { readonly id: SourceId })[] = (
  Object.entries(sources) as [SourceId, Source][]
).map(([id, source]) => ({ id, ...source }));
