import { Button, makeStyles, Radio, RadioGroup, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { PAPERS, paperOf } from "../../commands/papers.js";
import { STANDING_NOTE } from "../../core/index.js";
import { useBench } from "../bench.js";
import { paperHtml } from "../card/paper.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { setInHand } from "../useSet.js";

const useStyles = makeStyles({
  preview: {
    width: "100%",
    height: "420px",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: "#fff",
    colorScheme: "light",
  },
});

/** The papers of a set: a preview of each, and print. */
export function PapersScreen() {
  const styles = useStyles();
  const bench = useBench();
  const [id, setId] = useState(PAPERS[0]!.id);
  const [frame, setFrame] = useState<HTMLIFrameElement | null>(null);
  if (!bench.book.parts) return <Quiet>No parts yet. Papers are made from the parts of a set.</Quiet>;
  const paper = paperOf(bench.book, setInHand(bench), id);
  return (
    <Stack title="Papers">
      <RadioGroup value={id} onChange={(_, { value }) => setId(value)} aria-label="Paper">
        {PAPERS.map((each) => (
          <Radio key={each.id} value={each.id} label={each.name} />
        ))}
      </RadioGroup>
      <Button appearance="primary" onClick={() => frame?.contentWindow?.print()}>
        Print {paper.rows.length} rows
      </Button>
      <iframe ref={setFrame} className={styles.preview} title={paper.title} srcDoc={paperHtml(paper, STANDING_NOTE)} />
    </Stack>
  );
}
