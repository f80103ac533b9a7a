/** Words of invented orders: people, horses and remarks. */

/** All invented and combined at random; any likeness is chance. */
export const firstNames = [
  ...['Ada', 'Bram', 'Cass', 'Dell', 'Edda', 'Fenn', 'Gus', 'Hanne', 'Ivo', 'Jonna', 'Kit', 'Leda'],
  ...['Marnie', 'Nell', 'Orrin', 'Pia', 'Quill', 'Rosa', 'Sylvie', 'Tova', 'Ulla', 'Vern', 'Wilma', 'Yara'],
  ...['Zoë', 'Aimé', 'Jörn', 'Inés'],
] as const;

/** Two parts make many names. */
export const familyStarts = [
  ...['Ash', 'Bram', 'Cotton', 'Dun', 'Elder', 'Fox', 'Gorse', 'Hazel', 'Iron', 'Juniper', 'Kettle', 'Lark'],
  ...[
    'Merrin',
    'North',
    'Oxen',
    'Pine',
    'Quince',
    'Rasp',
    'Sedge',
    'Thistle',
    'Under',
    'Vale',
    'Wren',
    'Yarrow',
  ],
] as const;
export const familyEnds = [
  ...[
    'acre',
    'bank',
    'by',
    'cote',
    'dale',
    'field',
    'gate',
    'ham',
    'land',
    'mere',
    'ridge',
    'stead',
    'ton',
    'well',
  ],
] as const;

export const horseStarts = [
  ...['', '', '', 'Old ', 'Little ', 'Miss ', 'Mister ', 'Blue ', 'Dusty ', 'Sunday ', 'Prairie ', 'Copper '],
] as const;
export const horseNames = [
  ...[
    'Acorn',
    'Biscuit',
    'Cricket',
    'Deacon',
    'Ember',
    'Flint',
    'Galet',
    'Hopsack',
    'Indigo',
    'Juniper',
    'Kestrel',
  ],
  ...[
    'Ladder',
    'Marble',
    'Nutmeg',
    'Oatcake',
    'Pepper',
    'Quartz',
    'Rivet',
    'Sorrel',
    'Tansy',
    'Umber',
    'Vetch',
  ],
  ...['Wicket', 'Yarrow', 'Zither', 'Thimble', 'Gravel', 'Mustard', 'Plank', 'Socks'],
] as const;

/** Counter notes, which the program does not read. */
export const remarks = [
  'Comes in on Saturdays.',
  'Wants it before the first branding.',
  'Will bring the saddle when the cinch is cut.',
  'The old one has gone hard at the edges.',
  'Asked whether the accent could run the other way.',
  'Paid a part of it, the rest when it is fetched.',
  'Two hairless spots behind the elbow, healed by now.',
  'The horse swishes when it is drawn up.',
  'Rides the same saddle on another horse now and then.',
  'Send it by post, the road is closed until spring.',
  'A friend has one of ours and likes it.',
  'The latigo is new, the off billet is not.',
  'Tape was taken without the pad, to be taken again.',
  'Said the horse is in winter coat.',
  'Coming back into work after a long rest.',
  'Would like a spare ring in the middle.',
  'Knows the girth only from a photo.',
  'Bought the saddle used, the tree is not known.',
  'The horse has put on weight since the tape was taken.',
  'Call in the evening, there is no one there by day.',
  'No hurry: "when you get to it".',
  'Asked what it costs to tie it wider; told that wide is not always better.',
] as const;

/** Remarks beside a line. */
export const asides = [
  'told by telephone',
  'taped in the shop',
  'taped by the customer',
  'from last year',
  'ask again',
  'read off a photo',
  'as far as they know',
] as const;

export const reminders = ['not known yet', 'to be taped', 'ask', 'they will send it'] as const;
