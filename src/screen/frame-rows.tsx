/** Ink components that draw rows of a laid-out frame. */
import { Box, Text } from "ink";
import { type Look, type Row, type Span, widthOf } from "./row.ts";

type FrameProps = { rows: { index: number; row: Row }[]; colors: boolean };

/** Rows of the screen to be drawn, each one line of text, keyed by its place. */
export function FrameRows({ rows, colors }: FrameProps) {
  return (
    <Box flexDirection="column">
      {rows.map(({ index, row }) => (
        <RowLine key={index} row={row} colors={colors} />
      ))}
    </Box>
  );
}

type RowProps = { row: Row; colors: boolean };

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
}

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
