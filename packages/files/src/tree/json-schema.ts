/** The part of JSON Schema (2020-12) that describes a recipe: what the reader understands, and editors too. */

export type TypeName = "string" | "number" | "integer" | "boolean" | "array" | "object";

/** A readonly subset of JSON Schema. */
export interface Schema {
  /** The version of JSON Schema that it is written in. */
  readonly $schema?: string;
  /** The address that it is known by. */
  readonly $id?: string;
  /** What the value is, in a few words. */
  readonly title?: string;
  /** What the value means, in sentences. */
  readonly description?: string;
  /** Values that are right. */
  readonly examples?: readonly unknown[];
  /** What kind of value it is, or may be. */
  readonly type?: TypeName | readonly TypeName[];
  /** The keys that are known, each with the schema of its value. */
  readonly properties?: Readonly<Record<string, Schema>>;
  /** The keys that must be there. */
  readonly required?: readonly string[];
  /** What other keys may hold; `false` where there are none. */
  readonly additionalProperties?: false | Schema;
  /** What keys there may be, where all take the same value. */
  readonly propertyNames?: {
    /** The names that a key may have. */
    readonly enum: readonly string[];
  };
  /** How many keys there must be at least. */
  readonly minProperties?: number;
  /** Of these keys exactly one, some of them only without another. */
  readonly oneOf?: readonly {
    /** The key that is there. */
    readonly required: readonly [string];
    /** What may not be there with it. */
    readonly not?: {
      /** The key that may not be there. */
      readonly required: readonly [string];
    };
  }[];
  /** Of these keys at least one. */
  readonly anyOf?: readonly {
    /** The key that is there. */
    readonly required: readonly [string];
  }[];
  /** Keys that bring others with them. */
  readonly dependentRequired?: Readonly<Record<string, readonly string[]>>;
  /** The schema of each entry of a list. */
  readonly items?: Schema;
  /** How many entries there must be at least. */
  readonly minItems?: number;
  /** A regular expression that a text must match. */
  readonly pattern?: string;
  /** The values that are right. */
  readonly enum?: readonly (string | number)[];
  /** The one value that is right. */
  readonly const?: string | number;
  /** The least number that is right. */
  readonly minimum?: number;
  /** The greatest number that is right. */
  readonly maximum?: number;
  /** The number that a right one lies above. */
  readonly exclusiveMinimum?: number;
}
