import { Button } from "@fluentui/react-components";
import { placeName } from "../../core/bed/causes/next-check";
import type { Redrawn } from "../../core/bed/causes/redraw";
import type { NextCans } from "../../core/bed/interval/next-cans";
import type { WholeBedInterval } from "../../core/bed/interval/whole-bed";
import type { Figure } from "../../core/figures/figure";
import { MEASURES } from "../../core/figures/measures";
import { figure } from "../parts/figure";
import type { BedReading } from "./bed/use-bed-reading";

interface Props {
  id: string;
  reading: BedReading;
  stop: () => void;
  /** The figures as the sheets have them. */
  reported: { mean?: number | undefined; cu?: number | undefined; du?: number | undefined };
}

/** Narrowing [%] under which a measurement is not worth its while. */
const WORTH = 5;

const narrower = (left: number) => Math.round(100 * (1 - left));

/** What to measure next to narrow the interval, in words. */
function advice({ places, withCans, withTwins }: NextCans): string {
  const [cans, twins] = [narrower(withCans), narrower(withTwins)];
  if (Math.max(cans, twins) < WORTH) return "Four more cans or twin cans would hardly narrow it.";
  if (twins > cans) {
    return `Three pairs of twin cans, two side by side, would narrow the interval of ${MEASURES.DU.short} by about ${twins} %.`;
  }
  return `Four more cans, at ${places.map(placeName).join("; ")}, would narrow the interval of ${MEASURES.DU.short} by about ${cans} %.`;
}

/** How the bed compares with beds that were drawn without a fault, in words. */
function secondOpinion({ done, as }: Redrawn): string {
  return `Second opinion, on a weak head, low or falling pressure and wind only: ${as} of ${done} beds drawn without such a fault look${as === 1 ? "s" : ""} as odd as this one. Many: the cans show no sign of one. Few or none: they do.`;
}

function Line({ measure, of, reported }: { measure: Figure; of: WholeBedInterval; reported?: number | undefined }) {
  return (
    <tr>
      <th scope="row">{measure.short}</th>
      <td>{reported === undefined ? "–" : figure(reported)}</td>
      <td>
        {figure(of.estimate)} ({figure(of.low)} to {figure(of.high)})
      </td>
      <td>{measure.unit}</td>
    </tr>
  );
}

/** The whole bed by fit beside the figures reported from the cans, and the second opinion on the cause. */
export function WholeBedSection({ id, reading, stop, reported }: Props) {
  const { interval, redrawn, running, cause } = reading;
  if (!cause) return null;
  return (
    <section aria-labelledby={`${id}-whole`}>
      <h3 id={`${id}-whole`}>The whole bed, by fit</h3>
      {interval?.kind === "no interval" && <p className="note">No interval by fit: {interval.why}.</p>}
      {interval?.kind === "interval" && (
        <>
          <table>
            <caption>Of all the ground, 90 % interval in brackets</caption>
            <thead>
              <tr>
                <th scope="col">Figure</th>
                <th scope="col">From the cans</th>
                <th scope="col">Whole bed, by fit</th>
                <th scope="col">Unit</th>
              </tr>
            </thead>
            <tbody>
              <Line measure={MEASURES.MAR} of={interval.whole.MEAN} reported={reported.mean} />
              <Line measure={MEASURES.CU} of={interval.whole["CU.CHRISTIANSEN"]} reported={reported.cu} />
              <Line measure={MEASURES.DU} of={interval.whole["DU.QUARTER"]} reported={reported.du} />
            </tbody>
          </table>
          <p className="note">{advice(interval.next)}</p>
        </>
      )}
      {redrawn && <p>{secondOpinion(redrawn)}</p>}
      {running && (
        <p>
          <Button onClick={stop}>Stop</Button> {redrawn ? `${redrawn.done} of ${redrawn.of} beds` : "Drawing beds …"}
        </p>
      )}
    </section>
  );
}
