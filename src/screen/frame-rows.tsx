/** Ink components that draw rows of a laid-out frame. */
import { Box, Text } from "ink";
import type { Palette } from "./palette.ts";
import { type Look, type Row, type Styled, widthOf } from "./row.ts";

type FrameProps = { rows: { index: number; row: Row }[]; palette: Palette | undefined };

/** Rows of the screen to be drawn, each one line of text, keyed by its place. */
export function FrameRows({ rows, palette }: FrameProps) {
  return (
    <Box flexDirection="column">
      {rows.map(({ index, row }) => (
        <RowLine key={index} row={row} palette={palette} />
      ))}
    </Box>
  );
}

type RowProps = { row: Row; palette: Palette | undefined };

function RowLine({ row, palette }: RowProps) {
  // An empty text would take no line at all.
  if (widthOf(row) === 0) return <Text> </Text>;
  return (
    <Text wrap="truncate">
      {row.map((one, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the row
        <Piece key={index} piece={one} palette={palette} />
      ))}
    </Text>
  );
}

function Piece({ piece, palette }: { piece: Styled; palette: Palette | undefined }) {
  return <Text {...styleOf(piece.look, palette)}>{piece.text}</Text>;
}

function styleOf({ bold, dim, inverse, tone }: Look, palette: Palette | undefined) {
  return {
    ...(bold ? { bold } : {}),
    ...(dim ? { dimColor: true } : {}),
    ...(inverse ? { inverse } : {}),
    ...(tone && palette ? { color: palette[tone] } : {}),
  };
}
