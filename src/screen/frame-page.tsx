/** Ink components that put a laid-out frame on the terminal. */
import { Box, Text } from "ink";
import { memo } from "react";
import type { Frame } from "./layout.ts";
import { keyOf, type Look, type Row, type Span, widthOf } from "./row.ts";

type FrameProps = { frame: Frame; colors: boolean };

/** The whole screen: one line of text for each row. */
export function FramePage({ frame, colors }: FrameProps) {
  return (
    <Box flexDirection="column">
      {frame.rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place on the screen
        <RowLine key={index} row={row} colors={colors} />
      ))}
    </Box>
  );
}

type RowProps = { row: Row; colors: boolean };

const RowLine = memo(
  function RowLine({ row, colors }: RowProps) {
    // An empty text would take no line at all.
    if (widthOf(row) === 0) return <Text> </Text>;
    return (
      <Text wrap="truncate">
        {row.map((one, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the row
          <Piece key={index} piece={one} colors={colors} />
        ))}
      </Text>
    );
  },
  (a, b) => a.colors === b.colors && keyOf(a.row) === keyOf(b.row),
);

function Piece({ piece, colors }: { piece: Span; colors: boolean }) {
  return <Text {...styleOf(piece.look, colors)}>{piece.text}</Text>;
}

function styleOf({ bold, dim, inverse, color }: Look, colors: boolean) {
  return {
    ...(bold ? { bold } : {}),
    ...(dim ? { dimColor: true } : {}),
    ...(inverse ? { inverse } : {}),
    ...(color && colors ? { color } : {}),
  };
}
