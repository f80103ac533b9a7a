/** The questions in a customer's words. */
import type { QuestionName } from '../advice/questions.ts';

/** `{horse}` becomes the name or "the horse". */
export const shortWords: Readonly<Record<QuestionName, string>> = {
  'ring to ring':
    'Ring to ring. Saddle and pad on, cinch off. Soft tape snug and level under the chest, drawn with a hooked stick.',
  'elbow room':
    'Elbow room. {horse} square on level ground, helper holding. Ruler level from the girth groove (narrow spot behind the front leg) straight forward to the back of the elbow.',
  'ring set-back':
    'Ring. Saddle on a rack. Hang a weighted string from the front of the fork. Measure level, back to the ring center. Ring ahead of the string? Say so.',
  'heart girth':
    'Heart girth. Soft tape once around, just behind withers and elbows, breath out. Draw it under with a hooked stick.',
  'barrel shape': 'Ribs, seen from the front: flat (slab-sided), average, or round?',
  'side photo': 'A side photo of {horse}, saddled and standing square.',
};

export interface QuestionWords {
  readonly asked: string;
  readonly how: string;
  readonly safely: string;
}

/** docs/photo.md repeats this word for word. */
export const howToTakePhoto: readonly string[] = [
  'The horse stands square on level ground, saddled as it is ridden, with the stirrup leather and fender tied up out of the way: back of the elbow, girth groove and ring must show.',
  "The camera is level, at the height of the girth, straight across from the girth groove, 10 to 20 ft (3 to 6 m) away. Pace the distance. Farther back and zoomed in beats close up. A helper at the horse's shoulder looks along the horse and waves you left or right until you stand square.",
  'A stick of known length, a yard or longer if there is one, lies along the near side of the barrel, as near to the camera as the skin is there. A flat sheet of known size will do, the larger the better.',
  'A weighted string hangs in the picture, near the horse.',
  'Send the picture as it came from the camera.',
];

/** [common practice around tied horses, no source] */
export const questionWords: Readonly<Record<QuestionName, QuestionWords>> = {
  'ring to ring': {
    asked: 'The length from ring to ring',
    how: 'Put the saddle on with the pad you ride with and leave the cinch off. Hold the end of a soft tape to the middle of the front ring on one side, pass it under the chest a hand behind the elbow, where the cinch lies, and read it at the middle of the ring on the other side, snug and level.',
    safely:
      'Let the tape hang from the far ring and draw it toward you with a crop or a hooked stick; do not reach or bend under the horse. A loose saddle can slide: keep a hand on it.',
  },
  'elbow room': {
    asked: 'The room behind the elbow',
    how: 'The horse stands square on level ground. Find the girth groove, the narrowest place just behind the front leg, where a cinch settles. Measure straight forward from there to the back of the elbow, along the side, with a stiff ruler held level.',
    safely:
      'Stand beside the shoulder, facing back, with your feet clear of the front foot, and stay on your feet.',
  },
  'ring set-back': {
    asked: 'How far back the front ring hangs',
    how: 'Saddle on. Hang a weighted string straight down from the front of the fork, where it meets the bars. Measure from the string back to the middle of the front ring, level. Ring ahead of the string? Say so.',
    safely: 'The saddle can sit on a rack instead: just as good, away from the horse.',
  },
  'heart girth': {
    asked: 'The heart girth',
    how: 'Pass a soft tape once around the barrel, just behind the withers and the elbows, and read it when the horse has breathed out. Write down where the tape lay: farther back it reads more.',
    safely:
      'Lay the tape over the back first, let the end hang down on the far side, and draw it toward you with a crop or a hooked stick; do not reach or bend under the horse.',
  },
  'barrel shape': {
    asked: 'The shape of the barrel',
    how: 'Look at the ribs from the front, over the shoulder: flat (slab-sided), average, or round like a keg? One of these three words is enough.',
    safely: 'Look from the front or from well off to the side; do not stand behind the horse.',
  },
  'side photo': {
    asked: 'A photo from the side',
    how: `${howToTakePhoto.join(' ')} Write down what the stick or sheet is and how long, and how far you paced.`,
    safely:
      'Somebody else holds the horse. Whoever helps stands beside the shoulder, never behind or under the horse.',
  },
};

/** Once per message. */
export const generalSafety: readonly string[] = [
  'Tie the horse to something solid or have a helper hold it, on level ground, away from other horses.',
  'Stay on your feet beside the shoulder: never kneel, sit or crawl beside or under a horse, and keep your head up.',
  'Use a soft tape without a metal end, and never tie it to the horse or to yourself.',
  'If the horse will not stand for it, stop: we would rather hear "not measured" than a number you do not trust.',
];

export const howToAnswer =
  'Write every length with its unit, such as 44 in or 112 cm, and "not measured" for what you could not measure.';
