import { MessageBar, MessageBarBody } from "@fluentui/react-components";

/** What a person typed that can't be read, each with what would have worked; nothing where all can. */
export function NotRead({ texts }: { texts: readonly string[] }) {
  if (texts.length === 0) return null;
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>
        {texts.map((text) => (
          <div key={text}>{text}</div>
        ))}
      </MessageBarBody>
    </MessageBar>
  );
}
