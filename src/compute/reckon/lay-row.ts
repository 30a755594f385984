import Fraction from "fraction.js";

/** A stretch of the row that no rivet centre may stand in; its two ends are allowed. */
export interface KeepOut {
  readonly from: Fraction;
  readonly to: Fraction;
}

/** What a row has to meet. All lengths in one unit. */
export interface RowWanted {
  /** From end to end of the piece; above zero. */
  readonly length: Fraction;
  /** From each end to the nearest rivet centre; zero or more. */
  readonly edge: Fraction;
  /** Above zero. Never undercut. */
  readonly pitchMin: Fraction;
  /** Not below `pitchMin`. */
  readonly pitchMax?: Fraction;
  readonly keepOuts: readonly KeepOut[];
  /** Diameter of the holes: none of them runs into the next one or over the end. */
  readonly hole: Fraction;
  /** Exactly so many rivets, one or more. */
  readonly count?: number;
  /** The even pitch closest to this one; of two equally close, the smaller. */
  readonly pitch?: Fraction;
}

/** A row that meets it: evenly pitched, the same from either end. */
export interface Row {
  readonly ok: true;
  /** Absent when there is only one rivet. */
  readonly pitch?: Fraction;
  /** Rivet centres from one end, in order. */
  readonly positions: readonly Fraction[];
  /** How many would fit if nothing were kept out. */
  readonly mostWithout: number;
}

/** Why no row meets it, with what stands in the way. */
export interface NoRow {
  readonly ok: false;
  readonly why:
    | { readonly kind: "shorter than its edges"; readonly edges: Fraction }
    | { readonly kind: "over the edge"; readonly edge: Fraction; readonly hole: Fraction }
    | { readonly kind: "into each other"; readonly pitch: Fraction; readonly hole: Fraction }
    | { readonly kind: "too many wanted"; readonly pitch: Fraction; readonly most: number }
    | { readonly kind: "too few wanted"; readonly pitch: Fraction; readonly fewest: number }
    | {
        readonly kind: "between two pitches";
        /** With `most` rivets, the most that keep the minimum pitch. */
        readonly wide: Fraction;
        readonly most: number;
        /** With one rivet more. */
        readonly tight: Fraction;
      }
    | {
        readonly kind: "kept out";
        readonly fewest: number;
        readonly most: number;
        /** Where a rivet of the fullest row would stand in a stretch kept out. */
        readonly position: Fraction;
      }
    | { readonly kind: "beyond counting" };
}

/** No row has more rivets than this: beyond, a unit was mistyped. */
export const mostRivets = 10_000;

/**
 * Lays out a row of rivets: the first and last at the edge distance, the others at an even
 * pitch. Without `count` or `pitch` it takes as many rivets as the minimum pitch allows and the
 * stretches kept out leave. Where not even two rivets fit, one stands in the middle.
 *
 * All arithmetic is exact, so that a row at exactly the minimum pitch is found.
 */
export function layRow(wanted: RowWanted): Row | NoRow {
  const { length, edge, pitchMin, pitchMax, keepOuts, hole, count } = wanted;
  const between = length.sub(edge.mul(2));
  if (between.lt(0))
    return { ok: false, why: { kind: "shorter than its edges", edges: edge.mul(2) } };

  if (edge.mul(2).lt(hole)) return { ok: false, why: { kind: "over the edge", edge, hole } };

  const mostSpaces = between.div(pitchMin).floor();
  if (mostSpaces.gt(mostRivets)) return { ok: false, why: { kind: "beyond counting" } };
  const most = Number(mostSpaces.valueOf()) + 1;
  const fewest =
    most === 1 ? 1 : Math.max(2, pitchMax ? Number(between.div(pitchMax).ceil().valueOf()) + 1 : 2);

  if (count === undefined && fewest > most)
    return { ok: false, why: betweenPitches(between, most) };
  if (count !== undefined && count > most)
    return { ok: false, why: { kind: "too many wanted", pitch: between.div(count - 1), most } };
  if (count !== undefined && count > 1 && count < fewest)
    return { ok: false, why: { kind: "too few wanted", pitch: between.div(count - 1), fewest } };

  const allowed = count === undefined ? downFrom(most, fewest) : [count];
  const clear = allowed.filter((each) => !blockedAt(each));
  const chosen = wanted.pitch ? closestTo(wanted.pitch, clear) : clear[0];
  if (chosen === undefined) {
    const full = allowed[0] ?? most;
    const position = blockedAt(full) ?? edge;
    const least = allowed.at(-1) ?? fewest;
    return { ok: false, why: { kind: "kept out", fewest: least, most: full, position } };
  }
  const even = chosen > 1 ? between.div(chosen - 1) : undefined;
  if (even?.lt(hole)) return { ok: false, why: { kind: "into each other", pitch: even, hole } };
  return {
    ok: true,
    ...(even ? { pitch: even } : {}),
    positions: positionsOf(chosen),
    mostWithout: most,
  };

  function positionsOf(rivets: number): Fraction[] {
    if (rivets === 1) return [length.div(2)];
    const even = between.div(rivets - 1);
    return Array.from({ length: rivets }, (_, index) => edge.add(even.mul(index)));
  }

  // The first rivet behind the start of each stretch is the only one to try.
  function blockedAt(rivets: number): Fraction | undefined {
    const first = rivets === 1 ? length.div(2) : edge;
    const even = rivets === 1 ? length : between.div(rivets - 1);
    for (const { from, to } of keepOuts) {
      const behind = from.sub(first).div(even).floor().add(1);
      const index = behind.lt(0) ? new Fraction(0) : behind;
      const position = first.add(even.mul(index));
      if (index.lt(rivets) && position.lt(to)) return position;
    }
    return undefined;
  }

  // The counts come from many to few, so the first of two equally close has the smaller pitch.
  function closestTo(pitch: Fraction, counts: readonly number[]): number | undefined {
    const off = (rivets: number) =>
      between
        .div(Math.max(1, rivets - 1))
        .sub(pitch)
        .abs();
    let closest = counts[0];
    for (const each of counts) if (closest && off(each).lt(off(closest))) closest = each;
    return closest;
  }
}

function betweenPitches(between: Fraction, most: number): NoRow["why"] {
  return {
    kind: "between two pitches",
    wide: between.div(most - 1),
    most,
    tight: between.div(most),
  };
}

function downFrom(most: number, fewest: number): number[] {
  return Array.from({ length: most - fewest + 1 }, (_, index) => most - index);
}
