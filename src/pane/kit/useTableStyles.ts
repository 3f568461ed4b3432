import { makeStyles, tokens } from "@fluentui/react-components";

/** How a table looks in the pane: as wide as there is room, a thin line below each row, text at the left. */
export const useTableStyles = makeStyles({
  table: {
    borderCollapse: "collapse",
    width: "100%",
    "& th, & td": {
      textAlign: "left",
      padding: "4px 6px 4px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke3}`,
    },
  },
});
