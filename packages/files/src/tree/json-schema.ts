/** The part of JSON Schema (2020-12) that describes a recipe: what the reader understands, and editors too. */

export type TypeName = "string" | "number" | "integer" | "boolean" | "array" | "object";

/** A readonly subset of JSON Schema. */
export interface Schema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly type?: TypeName | readonly TypeName[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: false | Schema;
  /** What keys there may be, where all take the same value. */
  readonly propertyNames?: { readonly enum: readonly string[] };
  readonly minProperties?: number;
  /** Of these keys exactly one, some of them only without another. */
  readonly oneOf?: readonly {
    readonly required: readonly [string];
    readonly not?: { readonly required: readonly [string] };
  }[];
  /** Of these keys at least one. */
  readonly anyOf?: readonly { readonly required: readonly [string] }[];
  /** Keys that bring others with them. */
  readonly dependentRequired?: Readonly<Record<string, readonly string[]>>;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly pattern?: string;
  readonly enum?: readonly (string | number)[];
  readonly const?: string | number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
}
