/** An empty order to fill in: what is needed stands open, everything else waits behind a "#". */

const blank = `## An order for one cinch. Fill in the open lines; of any other line you know the answer to, take off the "#" in front,
## only that one sign, and write your answer over the example. Lengths take a unit: in, cm, mm, ft.
## Hands are written 15.1 hh (the digit after the point counts inches, 0 to 3).

order: # number or name of the order
#customer: { name: first and last, phone: "555 0100", email: name@example.com }
#taken: 2026-11-20
#due: 2026-12-18
#quantity: 1

horse:
  height: # such as 15.1 hh; heart-girth may stand instead, both are better
#  heart-girth: 73 in # around the barrel in the girth groove
#  elbow-room: 4 in # back of the elbow to the girth groove; { near: 4 in, off: 4 1/2 in } where the sides differ
#  body-length: 67 in # point of shoulder to point of buttock, tells the weight
#  name: horse
#  barrel: average # slab-sided | average | round, or { depth: 27 in }
#  withers: average # low | average | high
#  condition: 5 # Henneke score, 1 to 9
#  kind: stock # pony | stock | light | draft | mule | donkey
#  trouble: [] # elbow-gall, buckle-rub, saddle-rolls, creeps-forward, slips-back, girthy

saddle:
  rigging: # full | 7/8 | 3/4 | 5/8 | center-fire | another fraction | { set-back: 2 in }
#  style: flat-plate # ring | flat-plate | in-skirt | dropped
#  bar-span: 13 in # fork center to cantle front
#  ring-to-ring: 44 in # under the groove, saddle and pad on
#  ring-drop: 14 in # spine to ring along the skin
#  double: false # true when there is a back cinch too: the ticket then has a keeper for the strap between

#use: trail # roping | ranch | trail | barrels | reining | packing | endurance | pleasure

## The cinch in use now, and the one the customer asks for, if any: keep only the parts that are true.
## The style is straight, high-flare or low-flare; the buckle is one of the shop file.
#current: { style: straight, strands: 17, buckle: plain 3 1/2, length: 32 in, age: 3 y }
#wants: { style: straight, strands: 19, buckle: plain 3 1/2, length: 32 in }

## Marks on a side photo, as [pixels from the left, from the top]; the reference is a stick of known length, or a flat
## sheet: { width: 8.5 in, height: 11 in, corners: [[x, y], [x, y], [x, y], [x, y]] } clockwise from its top left.
## Needed: file, image-size, reference (scale), ring (where the cinch hangs), elbow and girth-groove (room). All else only helps.
#photo: { file: side.jpg, image-size: [1600, 1200], reference: { length: 36 in, from: [644, 640], to: [956, 647] }, reference-depth: 0 in, plumb: { top: [1137, 362], bottom: [1132, 695] }, ring: [728, 549], elbow: [696, 673], girth-groove: [736, 698], spine: [741, 475], underline: [736, 698], fork: [725, 431], cantle: [830, 440], camera-distance: 12 ft }

#colors: { body: [natural], accent: [rust] }
#options: [] # names of options in the shop file
#notes: anything else
`;

/** Commented YAML of an order with nothing filled in. Every line behind one "#" stands as it must without it, alone too. */
export function blankOrder(): string {
  return blank;
}
