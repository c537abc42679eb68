/** A JSON Schema, as far as its keys are looked through. */
export interface KeySchema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, KeySchema>>;
  readonly properties?: Readonly<Record<string, KeySchema>>;
  readonly additionalProperties?: boolean | KeySchema;
  readonly items?: boolean | KeySchema;
  readonly prefixItems?: readonly KeySchema[];
  readonly anyOf?: readonly KeySchema[];
  readonly oneOf?: readonly KeySchema[];
  readonly allOf?: readonly KeySchema[];
}

/** A part of a schema, and the name of the definition or the way of keys that it stands at. */
type Part = readonly [at: string, schema: KeySchema];

/** What a schema names beside what data has of it. */
export interface KeyTally {
  /** Keys of the schema that the data has. */
  readonly found: ReadonlySet<string>;
  /** Keys of the data that the schema does not name. */
  readonly strays: ReadonlySet<string>;
}

/** Every key that a schema names, each behind the definition that it stands in: `finding.rule`. */
export function keysOf(schema: KeySchema): ReadonlySet<string> {
  const keys = new Set<string>();
  const look = (at: string, part: KeySchema): void => {
    for (const [key, inner] of Object.entries(part.properties ?? {})) {
      keys.add(`${at}.${key}`);
      look(`${at}.${key}`, inner);
    }
    const { additionalProperties, items } = part;
    for (const branch of branches(part)) look(at, branch);
    if (typeof items === "object") look(at, items);
    for (const item of part.prefixItems ?? []) look(at, item);
    if (typeof additionalProperties === "object") look(`${at}.*`, additionalProperties);
  };
  look("", schema);
  for (const [name, part] of Object.entries(schema.$defs ?? {})) look(name, part);
  return keys;
}

/** The keys of data, told apart by whether a schema names them. */
export function tallyKeys(schema: KeySchema, data: readonly unknown[]): KeyTally {
  const found = new Set<string>();
  const strays = new Set<string>();
  /** The part with what it refers to and the branches that it leaves open. */
  const whole = ([at, part]: Part): readonly Part[] => {
    const name = part.$ref?.replace("#/$defs/", "");
    const named = name === undefined ? [] : whole([name, schema.$defs![name]!]);
    return [[at, part], ...named, ...branches(part).flatMap((branch) => whole([at, branch]))];
  };
  const look = (parts: readonly Part[], value: unknown): void => {
    if (Array.isArray(value)) {
      value.forEach((entry: unknown, i) => {
        look(
          parts.flatMap(([at, { items, prefixItems }]) => {
            const of = prefixItems?.[i] ?? items;
            return typeof of === "object" ? whole([at, of]) : [];
          }),
          entry,
        );
      });
    } else if (typeof value === "object" && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        const own = parts.flatMap(([at, { properties }]): Part[] => {
          const of = properties?.[key];
          return of === undefined ? [] : [[`${at}.${key}`, of]];
        });
        for (const [at] of own) found.add(at);
        const others = parts.flatMap(([at, { additionalProperties }]): Part[] =>
          typeof additionalProperties === "object" ? [[`${at}.*`, additionalProperties]] : [],
        );
        const next = own.length > 0 ? own : others;
        if (next.length === 0 && parts.some(([, { properties }]) => properties)) {
          strays.add(`${parts.map(([at]) => at).at(-1)}.${key}`);
        }
        look(next.flatMap(whole), inner);
      }
    }
  };
  for (const one of data) look(whole(["", schema]), one);
  return { found, strays };
}

function branches({ allOf = [], anyOf = [], oneOf = [] }: KeySchema): readonly KeySchema[] {
  return [...allOf, ...anyOf, ...oneOf];
}
