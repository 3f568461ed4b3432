import { useMemo } from "react";
import { staleMatches } from "../../commands/match.js";
import { wantsOf } from "../../commands/orderBook.js";
import { standsInTheWay } from "../../commands/standsInTheWay.js";
import { counted } from "../../commands/step.js";
import { textOf, useBench } from "../bench.js";
import { BringInList } from "../card/BringInList.js";
import { FindOffers } from "../card/FindOffers.js";
import { NothingFits } from "../card/NothingFits.js";
import { VendorLists } from "../card/VendorLists.js";
import { Quiet, Stack } from "../kit/Stack.js";
import { useLists } from "../useLists.js";

/** Vendors and the date of their lists; bring one in; find offers; what nothing fits, and why. */
export function VendorsScreen() {
  const { book, say, services } = useBench();
  const { kept, look } = useLists();
  const wants = useMemo(() => wantsOf(book), [book]);
  const stale = useMemo(() => staleMatches(book, wants), [book, wants]);
  const open = useMemo(() => standsInTheWay(wants), [wants]);
  const forget = async (vendor: string) => {
    try {
      await services.lists.forget(vendor);
    } catch (error) {
      say({ kind: "problem", text: textOf(error) });
    }
    await look();
  };
  return (
    <>
      <VendorLists kept={kept} onForget={(vendor) => void forget(vendor)} />
      <BringInList onTaken={() => void look()} />
      <Stack title="Offers for the parts" isCard>
        {stale.length > 0 && (
          <Quiet>
            Limits, rules or offers have changed since {counted(stale.length, "offer was", "offers were")} found.
          </Quiet>
        )}
        <FindOffers wants={wants} hasLong={kept.length > 0} />
        {open.length > 0 && (
          <>
            <strong>Nothing fits {open.length} of them:</strong>
            {open.map((want) => (
              <NothingFits key={want.ids.join(" ") + want.what} want={want} wants={wants} />
            ))}
          </>
        )}
      </Stack>
    </>
  );
}
