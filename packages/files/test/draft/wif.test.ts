import { drawdownOfDraft, type ShaftDraft, type ThreadLook, type ThreadMeasure } from "@drawcord/check";
import { toText } from "@drawcord/grid";
import fc from "fast-check";
import { parse } from "ini";
import { describe, expect, it } from "vitest";
import { soundWif, writeWif } from "../../src/index.js";
import { shaftDrafts } from "../arbitraries.js";
import { refusal } from "../refusals.js";

/** A towel: 2/2 twill on four shafts, six ends and four picks, in two colours. */
const towel = `[WIF]
Version=1.1
Date=April 20, 1997
Developers=wif@example.org
Source Program=by hand

[CONTENTS]
COLOR PALETTE=yes
TEXT=true
WEAVING=true
WARP=true
WEFT=true
TIEUP=true
COLOR TABLE=true
THREADING=true
WARP COLORS=true
TREADLING=true

[TEXT]
Title=Barley towel ; second version
Author=The winter course

[NOTES]
2=and then in the sun
1=Wash at 60 degrees

[WEAVING]
Rising Shed=true
Treadles=4
Shafts=4

[COLOR PALETTE]
Entries=2
Form=RGB
Range=0,999

[COLOR TABLE]
1=999,999,999
2=0,333,999

[WARP]
Threads=6
Color=1
Units=Centimeters
Spacing=0.125

[WEFT]
Color=2
Threads=4

[THREADING]
1=1
2=2
3=3
4=4
5=1
6=2

[TIEUP]
1=1,2
2=2,3
3=3,4
4=4,1

[TREADLING]
1=1
2=2
3=3
4=4

[WARP COLORS]
3=2
`;

const wif = (text: string | Uint8Array) => soundWif(text, "towel.wif");
const cloth = (text: string) => toText(drawdownOfDraft(wif(text).draft));
const answer = (text: string | Uint8Array) => refusal(() => wif(text)).message.replace("towel.wif:", "");
const changed = (from: string | RegExp, to: string) => {
  const text = towel.replace(from, to);
  if (text === towel) throw new Error(`the towel has no ${from}`);
  return text;
};

describe("a weaving draft", () => {
  it("is read with its threading, tie-up and treadling", () => {
    const { draft, ignored } = wif(towel);
    expect(draft.threading).toEqual([[1], [2], [3], [4], [1], [2]]);
    expect(draft.shedding).toEqual({
      kind: "tie-up",
      tieUp: [
        [1, 2],
        [2, 3],
        [3, 4],
        [1, 4],
      ],
      treadling: [[1], [2], [3], [4]],
    });
    expect(ignored).toEqual([]);
    // The first pick lowest: shafts 1 and 2, then 2 and 3, 3 and 4, 4 and 1.
    expect(cloth(towel)).toBe(["#..##.", "..##..", ".##..#", "##..##"].join("\n"));
  });

  it("has its texts, its colours brought to 0 to 255, and its spacing in its unit", () => {
    const { draft } = wif(towel);
    expect(draft.title).toBe("Barley towel ; second version");
    expect(draft.author).toBe("The winter course");
    expect(draft.notes).toEqual(["Wash at 60 degrees", "and then in the sun"]);
    expect(draft.warp).toEqual({
      colours: ["#ffffff", "#ffffff", "#0055ff", "#ffffff", "#ffffff", "#ffffff"],
      unit: "centimeters",
      spacing: { all: 0.125 },
    });
    expect(draft.weft).toEqual({ colours: ["#0055ff", "#0055ff", "#0055ff", "#0055ff"] });
  });

  it("of a sinking shed lowers what is tied", () => {
    expect(cloth(changed("Rising Shed=true", "Rising Shed=false"))).toBe(
      ["#..##.", "..##..", ".##..#", "##..##"]
        .join("\n")
        .replace(/[#.]/g, (square) => (square === "#" ? "." : "#")),
    );
  });

  it("may be lifted pick by pick, end on several shafts, picks on several treadles", () => {
    const lifted = changed(/\[TIEUP\][\s\S]*?(?=\[WARP COLORS\])/, "[LIFTPLAN]\n1=1,2\n2=3\n4=4\n").replace(
      "6=2\n",
      "6=2,3\n",
    );
    expect(cloth(lifted)).toBe(["...#..", "......", "..#..#", "##..##"].join("\n"));
    const both = changed("[TREADLING]\n1=1\n", "[TREADLING]\n1=1,2\n");
    expect(cloth(both).split("\n").at(-1)).toBe("###.##");
  });

  it.each<[string, string | Uint8Array]>([
    ["CR LF", towel.replaceAll("\n", "\r\n")],
    ["CR", towel.replaceAll("\n", "\r")],
    ["a byte order mark", `\uFEFF${towel}`],
    [
      "capitals",
      towel.replace(/^.*$/gm, (line) =>
        /Title|Author|[12]=[WA]|and/.test(line) ? line : line.toUpperCase(),
      ),
    ],
    ["small letters in its names", towel.replace(/^(\[.*\]|[A-Z][A-Z ]*=)/gm, (name) => name.toLowerCase())],
    ["comments and blanks", towel.replace(/^3=3$/gm, "; a comment\n  3 = 3 ; another\n\n")],
    [
      "comments after its words",
      towel.replace(/^(\[WARP\]|Units=.*|Rising.*|Threads=.*)$/gm, "$1 ; a comment"),
    ],
    ["the end marks of old systems", new TextEncoder().encode(`${towel}\u001a\u001a\r\n\u001a`)],
    ["no contents", towel.replace(/\[CONTENTS\][\s\S]*?\n\n/, "")],
  ])("is the same with %s", (_what, text) => {
    expect(wif(text)).toEqual(wif(towel));
  });

  it("is read in Latin-1 where it is no UTF-8", () => {
    const latin = Uint8Array.from(changed("Barley towel", "Foug\u00e8re"), (char) => char.charCodeAt(0));
    expect(wif(latin).draft.title).toBe("Foug\u00e8re ; second version");
  });

  it("is read with the quotation marks and dashes of old Windows", () => {
    const bytes = Uint8Array.from(changed("Barley towel", "\u0093Moth\u0094 \u0096 \u0080 9"), (char) =>
      char.charCodeAt(0),
    );
    expect(wif(bytes).draft.title).toBe("“Moth” – € 9 ; second version");
    expect(answer(bytes.map((byte) => (byte === 0x80 ? 0x81 : byte)))).toBe(
      "20:16: this is not a text file: it holds the control character U+0081",
    );
  });

  it("needs no counts: they go as far as its threads do", () => {
    const bare = towel.replace(/^(Threads|Treadles|Shafts)=.*\n/gm, "");
    expect(wif(bare)).toEqual(wif(towel));
  });

  it("says which sections it did not use", () => {
    const more = `${towel}[LIFTPLAN]\n1=1\n[WARP SYMBOLS]\n1=#\n[PRIVATE LOOMWORKS]\na=b\n`;
    expect(wif(more).ignored).toEqual(["LIFTPLAN", "WARP SYMBOLS", "PRIVATE LOOMWORKS"]);
  });

  it("does not mind what stands in sections that it does not read", () => {
    const more = towel.replace(
      "[TEXT]",
      "[PRIVATE LOOMWORKS 2]\nin these lines\nanything may stand\n\n[TEXT]",
    );
    expect(wif(more)).toEqual({ ...wif(towel), ignored: ["PRIVATE LOOMWORKS 2"] });
  });

  it("does not use what its contents list as false, and says so", () => {
    const more = `${towel.replace(/^(TIEUP|TREADLING|WARP COLORS)=true/gm, "$1=No")}[LIFTPLAN]\n1=1\n4=2,3\n`;
    const { draft, ignored } = wif(more);
    expect(draft.shedding).toEqual({ kind: "lift-plan", liftPlan: [[1], [], [], [2, 3]] });
    expect(new Set(draft.warp.colours)).toEqual(new Set(["#ffffff"]));
    expect(ignored).toEqual(["TIEUP", "TREADLING", "WARP COLORS"]);
    expect(answer(changed("TIEUP=true", "TIEUP=false"))).toBe(
      "1:1: the draft moves no shafts: it needs [TIEUP] and [TREADLING], or [LIFTPLAN]; what [CONTENTS] lists as false is not read",
    );
  });

  it("has its treadling before its lift plan, unless the treadling moves nothing", () => {
    const lifts = "[LIFTPLAN]\n1=1\n2=2\n3=3\n4=4\n";
    expect(wif(towel + lifts)).toEqual({ ...wif(towel), ignored: ["LIFTPLAN"] });
    for (const empty of [/(?<=\[TIEUP\]\n)[^[]*/, /(?<=\[TREADLING\]\n)[^[]*/]) {
      const { draft, ignored } = wif(changed(empty, "1=0\n") + lifts);
      expect(draft.shedding).toEqual({ kind: "lift-plan", liftPlan: [[1], [2], [3], [4]] });
      expect(ignored).toEqual(["TIEUP", "TREADLING"]);
    }
  });

  it.each([
    ["no colour table", changed(/\[COLOR TABLE\][\s\S]*?\n\n/, ""), ["COLOR PALETTE", "WARP COLORS"]],
    [
      "colours of another form",
      changed("Form=RGB", "Form=HSB"),
      ["COLOR PALETTE", "COLOR TABLE", "WARP COLORS"],
    ],
  ])("with %s has no colours, and says so", (_what, text, sections) => {
    const { draft, ignored } = wif(text);
    expect(draft.warp.colours).toBeUndefined();
    expect(draft.weft.colours).toBeUndefined();
    expect(ignored).toEqual(sections);
  });

  it("has colours from 0 to 255 where no range is stated, and from any range", () => {
    const table = (range: string, colour: string) =>
      wif(changed("Range=0,999\n", range).replace("1=999,999,999\n2=0,333,999", `1=${colour}\n2=${colour}`))
        .draft.warp.colours![0];
    expect(table("", "255,128,0")).toBe("#ff8000");
    expect(table("Range=0,65535\n", "65535,32768,0")).toBe("#ff8000");
    expect(table("Range=-100,100\n", "-100,0,100")).toBe("#0080ff");
  });

  it("has a section given twice from both, and of a key given twice the last", () => {
    expect(wif(`${towel}[THREADING]\n2=3\n6=1\n`).draft.threading).toEqual([[1], [3], [3], [4], [1], [1]]);
  });

  it.each<[string, string, string, string]>([
    ["no section", "Moth\n", "Moth", "this line is no part of a draft; expected a section such as [WIF]"],
    [
      "a newer version",
      changed("Version=1.1", "Version=2.0"),
      "2.0",
      "the draft is in version 2.0 of the format; version 1.1 is read",
    ],
    ["a broken name", changed("[TIEUP]", "[TIEUP"), "[TIEUP", "a section's name must stand between [ and ]"],
    [
      "a line of prose",
      changed("1=1,2", "treadle one"),
      "treadle one",
      "this line is no part of a draft; expected a key, an equals sign and a value",
    ],
    [
      "a shaft that there is not",
      changed("4=4\n5", "4=5\n5"),
      "5\n5",
      "4=5: expected shafts from 1 to 4, with commas between",
    ],
    [
      "a word for a shaft",
      changed("1=1,2", "1=one"),
      "one",
      "1=one: expected shafts from 1 to 4, with commas between",
    ],
    [
      "an end that there is not",
      changed("6=2\n", "7= 2\n"),
      "2\n\n[TIEUP",
      "7 is none of the ends 1 to 6 of [THREADING]",
    ],
    [
      "a count of ends beyond measure",
      changed("Threads=6", "Threads=99999999999"),
      "99999999999",
      "threads=99999999999: expected a whole number up to 1048576",
    ],
    [
      "a negative count",
      changed("Threads=6", "Threads=-6"),
      "-6",
      "threads=-6: expected a whole number up to 1048576",
    ],
    [
      "a colour that there is not",
      changed("Color=2", "Color=9"),
      "9\nThreads=4",
      "colour 9 is not in the colour table",
    ],
    [
      "a colour out of range",
      changed("0,333,999", "0,333,1000"),
      "0,333,1000",
      "colour 2 is 0,333,1000; expected red, green and blue from 0 to 999",
    ],
    [
      "a range upside down",
      changed("Range=0,999", "Range=999,0"),
      "999,0",
      "the colours range from 999 to 0; expected the lower number first",
    ],
    [
      "a range of one number",
      changed("Range=0,999", "Range=999"),
      "999\n",
      "the range of the colours has two numbers, such as 0,255",
    ],
    ["an end 0", changed("1=1\n2=2", "0= 1\n2=2"), "1\n2=2", "0 is none of the ends 1 to 6 of [THREADING]"],
    [
      "a unit that there is not",
      changed("Units=Centimeters", "Units=Ells"),
      "Ells",
      "units=Ells: expected Centimeters, Inches or Decipoints",
    ],
    [
      "a spacing that is none",
      changed("Spacing=0.125", "Spacing=wide"),
      "wide",
      "spacing=wide: expected a number from 0",
    ],
    [
      "neither true nor false",
      changed("Rising Shed=true", "Rising Shed=perhaps"),
      "perhaps",
      "rising shed=perhaps: expected true or false",
    ],
  ])("with %s is refused at its place", (_what, text, needle, sentence) => {
    const before = text.slice(0, text.indexOf(needle)).split("\n");
    expect(answer(text)).toBe(`${before.length}:${before.at(-1)!.length + 1}: ${sentence}`);
  });

  it.each<[string, string | Uint8Array, string]>([
    ["nothing", "", "the file is empty"],
    ["binary", Uint8Array.from([0, 1, 2]), "this is not a text file: it holds the control character U+0000"],
    ["no head", "[TEXT]\n", "this is no weaving draft: it has no section [WIF]"],
    [
      "no ends",
      towel.replace(/\[THREADING\][\s\S]*?\n\n/, "").replace("Threads=6\n", ""),
      "the draft has no ends: it needs [THREADING]",
    ],
    [
      "no picks",
      towel.replace(/\[TREADLING\][\s\S]*?\n\n/, "").replace("Threads=4\n", ""),
      "the draft has no picks: it needs [TREADLING] or [LIFTPLAN]",
    ],
    [
      "nothing that moves the shafts",
      towel.replace(/\[TIEUP\][\s\S]*?\n\n/, ""),
      "the draft moves no shafts: it needs [TIEUP] and [TREADLING], or [LIFTPLAN]",
    ],
    [
      "a cloth beyond measure",
      changed("Threads=6", "Threads=1000000").replace("Threads=4", "Threads=1000000"),
      "1000000 ends and 1000000 picks come to 1000000000000 interlacements; up to 2147483648 are worked out",
    ],
  ])("with %s is refused as a whole", (_what, text, sentence) => {
    expect(answer(text)).toBe(`1:1: ${sentence}`);
  });

  it("moves its shafts within bounds", () => {
    const all = Array.from({ length: 4000 }, (_, i) => i + 1);
    const tieUp = Array.from({ length: 100 }, (_, i) => `${i + 1}=${all.slice(0, 400).join(",")}`).join("\n");
    const treadling = Array.from(
      { length: 2000 },
      (_, i) => `${i + 1}=${all.slice(i % 100, 100).join(",")}`,
    ).join("\n");
    const text = `[WIF]\n[WEAVING]\nTreadles=100\nShafts=4000\n[THREADING]\n1=1\n[TIEUP]\n${tieUp}\n[TREADLING]\n${treadling}\n`;
    expect(wif(text).draft.shafts).toBe(4000);
    const wide = text.replace(
      /^(\d+)=1,2,3,.*,400$/gm,
      (_, treadle) => `${treadle}=${all.slice(0, 3999).join(",")}`,
    );
    expect(wide.length).toBeLessThan(2 ** 24);
    expect(answer(wide.replace(/\[TREADLING\][\s\S]*/, `[TREADLING]\n${distinctPairs()}`))).toBe(
      "1:1: the treadling moves more than 20000000 shafts",
    );
  });
});

function distinctPairs(): string {
  const pairs: string[] = [];
  for (let a = 1; a <= 100; a++)
    for (let b = a + 1; b <= 100; b++) pairs.push(`${pairs.length + 1}=${a},${b}`);
  return pairs.join("\n");
}

/** A draft whose threads all have measures of their own, so that two ways to say the same compare. */
function spelledOut(draft: ShaftDraft): ShaftDraft {
  const picks = draft.shedding.kind === "tie-up" ? draft.shedding.treadling : draft.shedding.liftPlan;
  const each = (measure: ThreadMeasure, threads: number) => ({
    ...measure,
    each: measure.each ?? new Array<number>(threads).fill(measure.all ?? 0),
  });
  const spell = ({ spacing, thickness, ...look }: ThreadLook, threads: number): ThreadLook => ({
    ...look,
    ...(spacing === undefined && thickness === undefined ? {} : { unit: look.unit ?? "decipoints" }),
    ...(spacing === undefined ? {} : { spacing: each(spacing, threads) }),
    ...(thickness === undefined ? {} : { thickness: each(thickness, threads) }),
  });
  return { ...draft, warp: spell(draft.warp, draft.threading.length), weft: spell(draft.weft, picks.length) };
}

describe("a draft written", () => {
  it("reads back with the same threads, colours, setts and texts", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const { draft: back, ignored } = wif(writeWif(draft));
        expect(spelledOut(back)).toEqual(spelledOut(draft));
        expect(ignored).toEqual([]);
      }),
    );
  });

  it("gives the same cloth to a reader that knows only sections and keys", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        expect(clothByHand(writeWif(draft))).toBe(toText(drawdownOfDraft(draft)));
      }),
    );
  });

  it("gives the same colours and measures to such a reader", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const { warp, weft } = spelledOut(draft);
        for (const [system, look] of [["WARP", warp] as const, ["WEFT", weft] as const]) {
          expect(lookByHand(writeWif(draft), system)).toEqual({
            colours: look.colours,
            unit: look.unit,
            spacing: look.spacing?.each,
            thickness: look.thickness?.each,
          });
        }
      }),
    );
  });

  it("begins with what the format asks of every file", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const file = parse(writeWif(draft)) as Record<string, Record<string, string>>;
        expect(Object.keys(file).slice(0, 2)).toEqual(["WIF", "CONTENTS"]);
        expect(file["WIF"]).toEqual({
          Version: "1.1",
          Date: "April 20, 1997",
          "Source Program": "Drawcord",
        });
        for (const [section, look] of [["WARP", draft.warp] as const, ["WEFT", draft.weft] as const]) {
          expect(file["CONTENTS"]).toHaveProperty(section);
          const measured = look.spacing !== undefined || look.thickness !== undefined;
          // A measure without its unit would be read in another by another reader.
          if (measured) expect(file[section]!["Units"]).toBeDefined();
        }
      }),
    );
  });

  it("lists the sections it has, and keeps its texts on one line", () => {
    const draft: ShaftDraft = { ...wif(towel).draft, title: "Moth\n[WEAVING]\u001b[2J" };
    const text = writeWif(draft);
    expect(text).toContain("Title=Moth [WEAVING] [2J\r\n");
    const sections = [...text.matchAll(/^\[(.+)\]\r$/gm)].map((match) => match[1]);
    const contents = [...text.matchAll(/^([A-Z ]+)=true\r$/gm)].map((match) => match[1]);
    expect(sections).toEqual(["WIF", "CONTENTS", ...contents]);
  });
});

/** The cloth of a file as a general reader of such files sees it: every square by itself, the last pick on top. */
function clothByHand(text: string): string {
  const file = parse(text) as Record<string, Record<string, string>>;
  const list = (section: string, number: number) =>
    (file[section]?.[number] ?? "").split(",").filter((word) => word !== "");
  const rising = String(file["WEAVING"]?.["Rising Shed"]) === "true";
  const ends = Number(file["WARP"]?.["Threads"]);
  const picks = Number(file["WEFT"]?.["Threads"]);
  const lines: string[] = [];
  for (let pick = picks; pick >= 1; pick--) {
    const moved = file["LIFTPLAN"]
      ? list("LIFTPLAN", pick)
      : list("TREADLING", pick).flatMap((treadle) => list("TIEUP", Number(treadle)));
    let line = "";
    for (let end = 1; end <= ends; end++) {
      const onMoved = list("THREADING", end).some((shaft) => moved.includes(shaft));
      line += onMoved === rising ? "#" : ".";
    }
    lines.push(line);
  }
  return lines.join("\n");
}

/** How the threads of a file look to such a reader; what the file does not say is undefined. */
function lookByHand(text: string, system: "WARP" | "WEFT") {
  const file = parse(text) as Record<string, Record<string, string>>;
  const general = file[system]!;
  const each = <T>(key: string, section: string, meant: (value: string) => T) => {
    const own = file[`${system} ${section}`];
    if (general[key] === undefined && own === undefined) return undefined;
    return Array.from({ length: Number(general["Threads"]) }, (_, i) =>
      meant(own?.[i + 1] ?? general[key] ?? "0"),
    );
  };
  const hex = (part: string) => Number(part).toString(16).padStart(2, "0");
  return {
    colours: each("Color", "COLORS", (index) => {
      expect(file["COLOR PALETTE"]).toMatchObject({ Form: "RGB", Range: "0,255" });
      return `#${file["COLOR TABLE"]![index]!.split(",").map(hex).join("")}`;
    }),
    unit: general["Units"]?.toLowerCase(),
    spacing: each("Spacing", "SPACING", Number),
    thickness: each("Thickness", "THICKNESS", Number),
  };
}
