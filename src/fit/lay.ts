/** Lays one spec on the horse: where its edge runs, how far from the elbow, what the buckle and the latigo do. */
import { normalCdf } from '../geometry/normal.ts';
import { runFor } from '../facts/length.ts';
import { bodyCordFeet } from '../stock/cord.ts';
import { fullWidth, outlineOf, widthAt, widthAtBuckle, type Outline } from '../stock/outline.ts';
import type { Candidate, Clearance, Spec } from './candidate.ts';
import { gapBetween, gapSd } from './clearance.ts';
import type { Ground } from './ground.ts';
import { leadingEdge, type LeadingEdge } from './leading-edge.ts';

/** Station of the buckle's low edge when the cinch has given: half its length less the frame. */
export const buckleLowStation = (spec: Spec, ground: Ground): number =>
  (spec.length + ground.facts.lengthNeed.stretch) / 2 - spec.buckle.frameHeight;

/** Station where this spec begins to widen; undefined when a low flare finds no room below the buckle. */
export function flareStation(spec: Spec, ground: Ground): number | undefined {
  const { model } = ground.facts;
  const high = buckleLowStation(spec, ground) - model['high-flare-start'];
  if (spec.style !== 'low-flare') return high;
  const ceiling = high - model['weave-step'];
  return ceiling < model['flare-length'] ? undefined : Math.min(ceiling, ground.lowFlareLimit(spec.strands));
}

/** Everything that follows from a spec on this horse; undefined when the style cannot be tied in that length. */
export function lay(spec: Spec, ground: Ground): Candidate | undefined {
  const { facts } = ground;
  const { model, lengthNeed } = facts;
  const top = buckleLowStation(spec, ground);
  const flare = flareStation(spec, ground);
  if (flare === undefined || top <= 0) return undefined;
  const { style, strands, buckle } = spec;
  const outline = outlineOf({ style, strands, flareStart: flare, top }, model);
  const frame = { width: buckle.frameWidth, height: buckle.frameHeight };
  const edge = leadingEdge(outline, frame, facts.centreLine.slope);
  return {
    style,
    strands,
    buckle,
    layers: spec.layers,
    length: spec.length,
    outline,
    width: fullWidth(strands, model),
    buckleWidth: widthAtBuckle(style, strands, model),
    elbowWidth: Math.min(widthAt(outline, ground.armpit), widthAt(outline, ground.elbow)),
    flareStart: style === 'straight' ? undefined : top - flare,
    clearance: clearanceOf(edge, outline, ground),
    buckleClearance: gapBetween(edge.points.subarray(2 * edge.bodyPoints), facts.elbowLine).distance,
    buckleAboveElbow: ground.heightAt(top) - facts.elbowHeight,
    buckleBelowWidest: ground.widest - top,
    run: runFor(spec.length, lengthNeed),
    runSd: lengthNeed.target.sd / 2,
    pressure: pressureOf(outline, ground),
    gripArea: 2 * areaBetween(outline, ground.armpit),
    cordFeet: bodyCordFeet(strands, spec.length),
  };
}

function clearanceOf(edge: LeadingEdge, outline: Outline, { facts }: Ground): Clearance {
  const gap = gapBetween(edge.points, facts.elbowLine);
  const onBody = gap.segment < edge.bodyPoints - 1;
  const sd = gapSd(gap, facts, onBody ? widthAt(outline, gap.ps) : 0);
  return {
    inches: gap.distance,
    sd,
    chance: normalCdf((gap.distance - facts.floor) / sd),
    station: gap.ps,
    where: onBody ? 'cinch' : 'buckle',
  };
}

/** Highest T/(w R) behind the elbow, psi: thin-wall hoop, only to compare candidates. */
function pressureOf(outline: Outline, { pressStations, facts }: Ground): number {
  let worst = 0;
  for (const { station, radius } of pressStations) {
    worst = Math.max(worst, facts.model.tension / (widthAt(outline, station) * radius));
  }
  return worst;
}

/** Area of one half from a station up to the buckle; the width runs straight between the outline's stations. */
function areaBetween(outline: Outline, from: number): number {
  const { stations, widths } = outline;
  let area = 0;
  for (let i = 1; i < stations.length; i++) {
    const high = stations[i] ?? 0;
    const low = Math.max(from, stations[i - 1] ?? 0);
    if (high > low) area += ((widthAt(outline, low) + (widths[i] ?? 0)) / 2) * (high - low);
  }
  return area;
}
