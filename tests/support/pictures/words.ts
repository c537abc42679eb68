/** Lines of type in a picture. */
import { palette, type Shape, textWidth } from "@drawcord/page";

type Face = "sans" | "sans-bold" | "serif" | "serif-bold";

/** One line of type: what it says, where its baseline begins, and how it is set. */
export function line(
  text: string,
  x: number,
  y: number,
  { anchor = "start", face = "sans", fill = palette.ink, size = 3.4 }: Partial<Setting> = {},
): Shape {
  return { kind: "text", x, y, text, size, face, fill, anchor };
}

interface Setting {
  readonly anchor: "start" | "middle" | "end";
  readonly face: Face;
  readonly fill: string;
  readonly size: number;
}

/** A text in lines of at most so many millimetres, the first baseline at `y`. */
export function paragraph(
  text: string,
  x: number,
  y: number,
  width: number,
  setting: Partial<Setting> = {},
): Shape[] {
  const { face = "sans", size = 3.4 } = setting;
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`.trim();
    if (lines.length > 0 && textWidth(longer, size, face) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((one, i) => line(one, x, y + i * size * 1.35, setting));
}
