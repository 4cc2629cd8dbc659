import type { ReactElement } from "react";
import type { ActiveVerdict, DryingStep, LeafShare, Share } from "../../agronomy/index.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { fillOf } from "./patterns.tsx";
import { heldParts, pictureWords } from "./words.ts";

/** Heights of the picture [px]. */
const BAR = 40;
const DRYING = 64;
const TOP = 8;
const LEAF_TOP = TOP + BAR + DRYING;
const AXIS_TOP = LEAF_TOP + BAR + 4;
const HEIGHT = AXIS_TOP + 24;

interface Segment {
  readonly from: number;
  readonly to: number;
  readonly fill: string;
}

interface SharePictureProps {
  readonly id: string;
  readonly verdict: ActiveVerdict;
  readonly path: readonly DryingStep[];
}

/**
 * The pair of bars of one active on one axis: in the tank above, on the leaf below, the drying path between them. The
 * two ends of the leaf answer are the edges of the hatched zone.
 */
export function SharePicture({ id, verdict, path }: SharePictureProps): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  return (
    <svg
      className="share-picture"
      width="100%"
      height={HEIGHT}
      role="img"
      aria-labelledby={`${id}-title ${id}-text`}
    >
      <title id={`${id}-title`}>
        {say("Free share of {active}", { active: language.phrases.name(verdict.name) })}
      </title>
      <desc id={`${id}-text`}>{pictureWords(verdict, language)}</desc>
      <Axis />
      <DryingPath active={verdict.active} path={path} />
      <Bar top={TOP} segments={tankSegments(verdict.inTank)} />
      <Spread top={TOP} share={verdict.inTank} />
      <Bar top={LEAF_TOP} segments={leafSegments(verdict.onLeaf)} />
      {verdict.onLeaf.free !== null && <Central at={verdict.onLeaf.free} />}
      <Spread top={LEAF_TOP} share={verdict.onLeaf} />
    </svg>
  );
}

function Axis(): ReactElement {
  return (
    <g className="axis">
      {[0, 0.25, 0.5, 0.75, 1].map((at) => (
        <g key={at}>
          <line x1={percent(at)} x2={percent(at)} y1={TOP} y2={AXIS_TOP + 4} className="grid" />
          <text
            x={percent(at)}
            y={AXIS_TOP + 19}
            textAnchor={at === 0 ? "start" : at === 1 ? "end" : "middle"}
          >
            {at === 1 ? "100 %" : String(100 * at)}
          </text>
        </g>
      ))}
    </g>
  );
}

function Bar({ top, segments }: { top: number; segments: readonly Segment[] }): ReactElement {
  const say = sayIn(useLanguage());
  return (
    <g>
      {segments.map(({ from, to, fill }) => (
        <rect
          key={`${fill} ${String(from)}`}
          className={`bar bar-${fill}`}
          x={percent(from)}
          y={top}
          width={percent(Math.max(0, to - from))}
          height={BAR}
        />
      ))}
      {segments.length === 0 && <rect className="bar bar-unknown" x="0" y={top} width="100%" height={BAR} />}
      {segments.length === 0 && (
        <text x="50%" y={top + BAR / 2 + 6} textAnchor="middle" className="unknown-word">
          {say("not known")}
        </text>
      )}
    </g>
  );
}

/** The central leaf answer: where the path lands. */
function Central({ at }: { at: number }): ReactElement {
  return (
    <g>
      <line
        x1={percent(at)}
        x2={percent(at)}
        y1={LEAF_TOP - 5}
        y2={LEAF_TOP + BAR + 5}
        className="central-halo"
      />
      <line x1={percent(at)} x2={percent(at)} y1={LEAF_TOP - 5} y2={LEAF_TOP + BAR + 5} className="central" />
    </g>
  );
}

/** The 5th to 95th percentile, where it was computed. */
function Spread({ top, share }: { top: number; share: Share | LeafShare }): ReactElement | null {
  if (share.low === null || share.high === null) return null;
  const y = top + BAR - 9;
  return (
    <g className="spread">
      <line x1={percent(share.low)} x2={percent(share.high)} y1={y} y2={y} className="spread-halo" />
      <line x1={percent(share.low)} x2={percent(share.high)} y1={y} y2={y} />
      <line x1={percent(share.low)} x2={percent(share.low)} y1={y - 5} y2={y + 5} />
      <line x1={percent(share.high)} x2={percent(share.high)} y1={y - 5} y2={y + 5} />
    </g>
  );
}

/** Free share against how far the drop has dried, on a logarithmic scale downwards. */
function DryingPath({ active, path }: { active: string; path: readonly DryingStep[] }): ReactElement | null {
  const points = path.flatMap((step) => {
    const free = step.free[active];
    return free === null || free === undefined ? [] : [{ factor: step.factor, free }];
  });
  const last = points.at(-1);
  if (last === undefined || points.length < 2) return null;
  const line = points
    .map(
      ({ factor, free }) =>
        `${(100 * free).toFixed(2)},${((100 * Math.log(factor)) / Math.log(last.factor)).toFixed(2)}`,
    )
    .join(" ");
  return (
    <svg
      x="0"
      y={TOP + BAR}
      width="100%"
      height={DRYING}
      viewBox="0 0 100 100"
      preserveAspectRatio="none"
      overflow="visible"
    >
      <polyline points={line} className="drying" vectorEffect="non-scaling-stroke" />
    </svg>
  );
}

function tankSegments(share: Share): readonly Segment[] {
  if (share.free === null) return [];
  return [{ from: 0, to: share.free, fill: "free" }, ...heldSegments(share.free, share.heldBy)];
}

function leafSegments(leaf: LeafShare): readonly Segment[] {
  if (leaf.free === null) return [];
  const ends = [leaf.withSolid, leaf.withoutSolid].filter((end) => end !== null);
  const low = Math.min(leaf.free, ...ends.map((end) => end.free));
  const best = ends.reduce((a, b) => (b.free > a.free ? b : a), { free: leaf.free, heldBy: leaf.heldBy });
  const unsure = best.free - low >= 0.005 ? [{ from: low, to: best.free, fill: "unsure" }] : [];
  const sure = unsure.length > 0 ? low : best.free;
  return [{ from: 0, to: sure, fill: "free" }, ...unsure, ...heldSegments(best.free, best.heldBy)];
}

function heldSegments(free: number, heldBy: Readonly<Record<string, number>>): readonly Segment[] {
  let from = free;
  return heldParts(heldBy).map(([holder, share]) => {
    const segment = { from, to: from + share, fill: fillOf(holder) };
    from += share;
    return segment;
  });
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)}%`;
}
