/** Everything the shop could tie for one order: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import { Ground, hasRoom, type Hang } from '../fit/ground.ts';
import { Laid } from '../fit/lay.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { tiedBy, type Make, type TiedList } from '../stock/tied.ts';
import { Seen, type Judged } from './judge.ts';
import { alikeOn, ofShop } from './of-shop.ts';
import type { Field, Kinds } from './parts.ts';

/**
 * All candidates of one order, in a fixed order that does not depend on the order of the shop's lists: of each make
 * (style, strands and buckle) every length.
 */
export class Trial implements Field {
  readonly facts: CaseFacts;
  readonly tied: TiedList;
  readonly makes: readonly Make[];
  /** Of each buckle every length: a hang's number is that of its buckle times the number of lengths, plus that of its length. */
  readonly hangs: readonly Hang[];
  readonly lengths: number;
  readonly #ground: Ground;
  /** The candidate that is looked at just now. */
  readonly #laid: Laid;

  constructor(facts: CaseFacts) {
    const tied = tiedBy(facts.shop);
    const { makes, buckles } = tied;
    const ground = new Ground(facts, tied);
    const lengths = lengthSteps(facts.lengthNeed.target.value, facts.shop.lengths);
    this.facts = facts;
    this.tied = tied;
    this.makes = makes;
    const hangs: Hang[] = [];
    for (const buckle of buckles) for (const length of lengths) hangs.push(ground.hang(buckle, length));
    this.hangs = hangs;
    this.lengths = lengths.length;
    this.#ground = ground;
    this.#laid = new Laid(ground);
  }

  /** How many candidates there are, those that cannot be tied among them. */
  get size(): number {
    return this.makes.length * this.lengths;
  }

  /** All that can be tied. */
  get all(): Judged[] {
    const found: Judged[] = [];
    for (let make = 0; make < this.makes.length; make++) {
      const from = this.firstHangOf(make);
      for (let hang = from; hang < from + this.lengths; hang++)
        if (this.canTie(make, hang)) found.push(this.seat({ make, hang }));
    }
    return found;
  }

  /** Whether the style can be tied below that buckle at all. */
  canTie(make: number, hang: number): boolean {
    return hasRoom((this.makes[make] as Make).style, this.hangs[hang] as Hang);
  }

  alike(axes: number): Kinds {
    return alikeOn(axes, ofShop(this.tied, this.facts.model), this.tied);
  }

  laid(make: number, hang = this.firstHangOf(make)): Laid {
    return this.#lay(this.#laid, make, hang);
  }

  #lay(laid: Laid, make: number, hang: number): Laid {
    return laid.lay(this.makes[make] as Make, this.hangs[hang] as Hang);
  }

  /** An object of its own for a candidate; its tally where that is known. */
  seat({ make, hang, tally }: { make: number; hang: number; tally?: number }): Judged {
    return new Seen(this.facts, this.#lay(new Laid(this.#ground), make, hang), tally);
  }

  /** Number of the shortest hang of a make's buckle. */
  firstHangOf(make: number): number {
    return (this.makes[make] as Make).buckleNo * this.lengths;
  }
}
