import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { CorrectedCells } from "../../core/index.js";
import { Row, Stack } from "../kit/Stack.js";
import { CorrectFigures } from "./CorrectFigures.js";
import type { StepThrough } from "./Frame.js";
import { Became, LineText } from "./LineView.js";
import { isUnsure, type UnderstoodLine } from "./lineByLine.js";

/** The line in the hand: its writing, how it is understood, and the way to say what really stands there. */
export function ChosenLine(props: {
  understood: UnderstoodLine;
  step: StepThrough;
  correct: (index: number, cells: CorrectedCells) => void;
}) {
  const { understood, step } = props;
  const [correcting, setCorrecting] = useState<number | null>(null);
  const { parts } = understood;
  const accept = () => {
    for (const { index } of parts) props.correct(index, { unsure: null });
  };
  return (
    <Stack title={`Line ${understood.line.number}`} isCard>
      <LineText line={understood.line} />
      <div>
        <Became {...understood} />
      </div>
      {correcting === understood.line.number ? (
        parts.map((part) => (
          <CorrectFigures
            key={part.index}
            part={part}
            done={(cells) => {
              if (cells) props.correct(part.index, cells);
              setCorrecting(null);
            }}
          />
        ))
      ) : (
        <Row>
          <Button size="small" disabled={!step.before} onClick={step.before ?? undefined}>
            Line before
          </Button>
          <Button size="small" disabled={!step.after} onClick={step.after ?? undefined}>
            Next line
          </Button>
          {parts.length > 0 && (
            <Button size="small" onClick={() => setCorrecting(understood.line.number)}>
              Correct it
            </Button>
          )}
          {parts.some(isUnsure) && (
            <Button size="small" onClick={accept}>
              Right as it is
            </Button>
          )}
        </Row>
      )}
    </Stack>
  );
}
